/* The first code of a program or library on Android, as its loader and C library expect it. A library is made of the
 * same file, without the part for programs. */
__attribute__((visibility("hidden"))) void* __dso_handle = &__dso_handle;
extern int __cxa_atexit(void (*function)(void*), void* argument, void* library);
extern void __cxa_finalize(void* library);

/* Android's C library leaves these to each program and library, because they tell whose function it is. */
__attribute__((visibility("hidden"))) int atexit(void (*function)(void))
{
    return __cxa_atexit((void (*)(void*))function, 0, &__dso_handle);
}

#ifdef FOR_LIBRARY
__attribute__((destructor)) static void end(void) { __cxa_finalize(&__dso_handle); }
#else
typedef struct {
    void (**before)(void);
    void (**first)(void);
    void (**last)(void);
} Functions;
extern int main(int argc, char** argv, char** envp);
extern void __libc_init(void* arguments, void (*onExit)(void), int (*start)(int, char**, char**),
                        const Functions* functions);

__attribute__((visibility("hidden"), used)) void begin(void* arguments)
{
    const Functions none = {0, 0, 0}; /* the loader calls them */
    __libc_init(arguments, 0, main, &none);
}
__asm__(".globl _start\n_start:\n mov x29, 0\n mov x30, 0\n mov x0, sp\n b begin\n");
#endif
