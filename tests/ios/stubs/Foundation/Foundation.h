// Declarations repeated from Apple's documentation, as few as platform/ios uses: for a check of syntax and types alone.
#pragma once
#include <cstddef>

typedef signed char BOOL;
typedef long NSInteger;
typedef unsigned long NSUInteger;
typedef double NSTimeInterval;
#define nil ((id)0)
#define YES ((BOOL)1)
#define NO ((BOOL)0)
struct _NSZone;
typedef struct {
    unsigned long state;
    id __unsafe_unretained* itemsPtr;
    unsigned long* mutationsPtr;
    unsigned long extra[5];
} NSFastEnumerationState;
typedef double CGFloat;
typedef struct {
    CGFloat x, y, width, height;
} CGRect;
typedef struct {
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
                                  objects:(id __unsafe_unretained[])buffer
                                    count:(NSUInteger)length;
@end

__attribute__((objc_root_class))
@interface NSObject<NSObject>
+ (instancetype)alloc;
- (instancetype)init;
+ (Class)class;
@end

@interface NSString : NSObject <NSCopying>
+ (instancetype)stringWithUTF8String:(const char*)bytes;
- (BOOL)containsString:(NSString*)part;
- (NSString*)stringByAppendingPathComponent:(NSString*)name;
@property(readonly) const char* UTF8String;
- (BOOL)isEqualToString:(NSString*)other;
@end
@interface NSSimpleCString : NSString
@end
@interface NSConstantString : NSSimpleCString
@end
extern void* _NSConstantStringClassReference;

@interface NSNumber : NSObject
@end
@interface NSError : NSObject
@end
@interface NSDate : NSObject
@property(class, readonly) NSDate* date;
@end
NSString* NSTemporaryDirectory(void);
@interface NSURL : NSObject
@property(readonly, copy) NSString* path;
+ (NSURL*)fileURLWithPath:(NSString*)path;
@property(readonly, copy) NSURL* URLByDeletingLastPathComponent;
@property(readonly, copy) NSString* lastPathComponent;
@end
@interface NSURLComponents : NSObject
@property(copy) NSString* scheme;
@property(copy) NSString* host;
@property(copy) NSString* path;
@property(readonly, copy) NSURL* URL;
@end
@interface NSNotification : NSObject
@end
@interface NSOperationQueue : NSObject
@property(class, readonly) NSOperationQueue* mainQueue;
@end
@interface NSNotificationCenter : NSObject
@property(class, readonly) NSNotificationCenter* defaultCenter;
- (id)addObserverForName:(NSString*)name
                  object:(id)object
                   queue:(NSOperationQueue*)queue
              usingBlock:(void (^)(NSNotification* notification))block;
@end
@interface NSLocale : NSObject
@property(class, readonly, copy) NSLocale* currentLocale;
+ (instancetype)localeWithLocaleIdentifier:(NSString*)ident;
@end
@interface NSDateFormatter : NSObject
+ (NSString*)dateFormatFromTemplate:(NSString*)form options:(NSUInteger)options locale:(NSLocale*)locale;
@property(copy) NSLocale* locale;
@property(copy) NSString* dateFormat;
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
+ (instancetype)arrayWithObjects:(const ObjectType[])objects count:(NSUInteger)count;
- (BOOL)containsObject:(ObjectType)object;
@property(readonly) NSUInteger count;
@property(readonly) ObjectType firstObject;
@end
@interface NSMutableArray<ObjectType> : NSArray <ObjectType>
+ (instancetype)array;
+ (instancetype)arrayWithArray:(NSArray*)array;
- (void)addObject:(ObjectType)object;
- (void)removeObjectsInRange:(NSRange)range;
@end
@interface NSSet<__covariant ObjectType> : NSObject <NSFastEnumeration>
+ (instancetype)set;
+ (instancetype)setWithObjects:(ObjectType)first, ...;
- (BOOL)containsObject:(ObjectType)object;
@end
@interface NSMutableSet<ObjectType> : NSSet <ObjectType>
- (void)addObject:(ObjectType)object;
@end
@interface NSDictionary<__covariant KeyType, __covariant ObjectType> : NSObject <NSFastEnumeration>
+ (instancetype)dictionaryWithObjects:(const ObjectType[])objects
                              forKeys:(const KeyType<NSCopying>[])keys
                                count:(NSUInteger)count;
- (ObjectType)objectForKeyedSubscript:(KeyType)key;
@end

@interface NSUserDefaults : NSObject
@property(class, readonly) NSUserDefaults* standardUserDefaults;
- (NSArray*)arrayForKey:(NSString*)key;
- (void)setObject:(id)value forKey:(NSString*)key;
@end
@interface NSFileManager : NSObject
@property(class, readonly) NSFileManager* defaultManager;
- (BOOL)isReadableFileAtPath:(NSString*)path;
- (BOOL)fileExistsAtPath:(NSString*)path isDirectory:(BOOL*)isDirectory;
@end

extern "C" void NSLog(NSString* format, ...);
extern NSString* const NSCurrentLocaleDidChangeNotification;
