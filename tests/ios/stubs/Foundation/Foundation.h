// Declarations of Apple's, as few as platform/ios uses. ../../declarations.py holds them against the objc2 crates.
#pragma once
#include <stddef.h>
#include <stdint.h>

#define FOUNDATION_EXPORT extern "C"
#define NS_ASSUME_NONNULL_BEGIN _Pragma("clang assume_nonnull begin")
#define NS_ASSUME_NONNULL_END _Pragma("clang assume_nonnull end")
#define NS_ENUM(type, name)                                                                                            \
    enum name : type name;                                                                                             \
    enum name : type
#define NS_OPTIONS(type, name)                                                                                         \
    type name;                                                                                                         \
    enum : name
#define nil __null
#define YES __objc_yes
#define NO __objc_no

NS_ASSUME_NONNULL_BEGIN

typedef bool BOOL;
typedef long NSInteger;
typedef unsigned long NSUInteger;
typedef double NSTimeInterval;
typedef struct {
    unsigned long state;
    id __unsafe_unretained _Nullable* _Nullable itemsPtr;
    unsigned long* _Nullable mutationsPtr;
    unsigned long extra[5];
} NSFastEnumerationState;
typedef double CGFloat;
struct CGPoint {
    CGFloat x;
    CGFloat y;
};
typedef struct CGPoint CGPoint;
struct CGSize {
    CGFloat width;
    CGFloat height;
};
typedef struct CGSize CGSize;
struct CGRect {
    CGPoint origin;
    CGSize size;
};
typedef struct CGRect CGRect;
typedef struct _NSRange {
    NSUInteger location;
    NSUInteger length;
} NSRange;
static inline NSRange NSMakeRange(NSUInteger a, NSUInteger b) { return {a, b}; }

@class NSString, NSDate, NSLocale, NSArray, NSMutableArray;

@protocol NSObject
- (BOOL)isKindOfClass:(Class)aClass;
@end
@protocol NSCopying
@end
@protocol NSFastEnumeration
- (NSUInteger)countByEnumeratingWithState:(NSFastEnumerationState*)state
                                  objects:(id __unsafe_unretained _Nullable[_Nonnull])buffer
                                    count:(NSUInteger)length;
@end

__attribute__((objc_root_class))
@interface NSObject<NSObject>
+ (instancetype)alloc;
- (instancetype)init;
+ (Class)class;
@end

@interface NSString : NSObject <NSCopying>
+ (nullable instancetype)stringWithUTF8String:(const char*)bytes;
- (BOOL)containsString:(NSString*)part;
- (NSString*)stringByAppendingPathComponent:(NSString*)name;
@property(nullable, readonly) const char* UTF8String;
- (BOOL)isEqualToString:(NSString*)other;
@end
@interface NSValue : NSObject
@end
@interface NSNumber : NSValue
@property(readonly) NSUInteger unsignedIntegerValue;
@end
@interface NSData : NSObject
+ (instancetype)dataWithBytes:(nullable const void*)bytes length:(NSUInteger)length;
@end
@interface NSError : NSObject
@property(readonly) NSInteger code;
@end
@interface NSDate : NSObject
+ (instancetype)date;
@end
FOUNDATION_EXPORT NSString* NSTemporaryDirectory(void);
@interface NSURL : NSObject
@property(nullable, readonly, copy) NSString* path;
+ (NSURL*)fileURLWithPath:(NSString*)path;
@property(nullable, readonly, copy) NSURL* URLByDeletingLastPathComponent;
@property(nullable, readonly, copy) NSString* lastPathComponent;
@end
@interface NSURLComponents : NSObject
@property(nullable, copy) NSString* scheme;
@property(nullable, copy) NSString* host;
@property(nullable, copy) NSString* path;
@property(nullable, readonly, copy) NSURL* URL;
@end
@interface NSLocale : NSObject
@property(class, readonly, copy) NSLocale* currentLocale;
+ (instancetype)localeWithLocaleIdentifier:(NSString*)ident;
@end
@interface NSFormatter : NSObject
@end
@interface NSDateFormatter : NSFormatter
+ (nullable NSString*)dateFormatFromTemplate:(NSString*)form
                                     options:(NSUInteger)options
                                      locale:(nullable NSLocale*)locale;
@property(null_resettable, copy) NSLocale* locale;
@property(null_resettable, copy) NSString* dateFormat;
- (NSString*)stringFromDate:(NSDate*)date;
@end
@interface NSDateComponents : NSObject
@property NSInteger year;
@property NSInteger month;
@property NSInteger day;
@property NSInteger hour;
@property NSInteger minute;
@end

@interface NSArray<__covariant ObjectType> : NSObject <NSFastEnumeration>
+ (instancetype)array;
+ (instancetype)arrayWithObjects:(const ObjectType _Nonnull[_Nonnull])objects count:(NSUInteger)count;
- (BOOL)containsObject:(ObjectType)object;
@property(readonly) NSUInteger count;
@property(nullable, readonly) ObjectType firstObject;
@end
@interface NSMutableArray<ObjectType> : NSArray <ObjectType>
+ (instancetype)array;
+ (instancetype)arrayWithArray:(NSArray<ObjectType>*)array;
- (void)addObject:(ObjectType)object;
- (void)removeObjectsInRange:(NSRange)range;
@end
@interface NSSet<__covariant ObjectType> : NSObject <NSFastEnumeration>
+ (instancetype)set;
+ (instancetype)setWithArray:(NSArray<ObjectType>*)array;
- (BOOL)containsObject:(ObjectType)object;
@end
@interface NSMutableSet<ObjectType> : NSSet <ObjectType>
- (void)addObject:(ObjectType)object;
@end
@interface NSDictionary<__covariant KeyType, __covariant ObjectType> : NSObject <NSFastEnumeration>
+ (instancetype)dictionaryWithObjects:(const ObjectType _Nonnull[_Nullable])objects
                              forKeys:(const KeyType<NSCopying> _Nonnull[_Nullable])keys
                                count:(NSUInteger)count;
- (nullable ObjectType)objectForKeyedSubscript:(KeyType)key;
@end

@interface NSNotification : NSObject
@property(nullable, readonly, copy) NSDictionary* userInfo;
@end
@interface NSOperationQueue : NSObject
@property(class, readonly) NSOperationQueue* mainQueue;
@end
@interface NSNotificationCenter : NSObject
@property(class, readonly) NSNotificationCenter* defaultCenter;
- (id<NSObject>)addObserverForName:(nullable NSString*)name
                            object:(nullable id)object
                             queue:(nullable NSOperationQueue*)queue
                        usingBlock:(void (^)(NSNotification* notification))block;
@end

@interface NSUserDefaults : NSObject
@property(class, readonly) NSUserDefaults* standardUserDefaults;
- (nullable NSArray*)arrayForKey:(NSString*)key;
- (void)setObject:(nullable id)value forKey:(NSString*)key;
@end
@interface NSFileManager : NSObject
@property(class, readonly) NSFileManager* defaultManager;
- (BOOL)isReadableFileAtPath:(NSString*)path;
- (BOOL)fileExistsAtPath:(NSString*)path isDirectory:(nullable BOOL*)isDirectory;
@end

FOUNDATION_EXPORT void NSLog(NSString* format, ...);
FOUNDATION_EXPORT NSString* const NSCurrentLocaleDidChangeNotification;

typedef struct dispatch_queue_s* dispatch_queue_t;
FOUNDATION_EXPORT dispatch_queue_t dispatch_get_main_queue(void);
FOUNDATION_EXPORT void dispatch_async(dispatch_queue_t queue, void (^block)(void));

NS_ASSUME_NONNULL_END
