/* Shows that the loader, the headers and Android's C library fit: threads, time, files, errors, commands. */
#include <assert.h>
#include <errno.h>
#include <pthread.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

static volatile sig_atomic_t caught;

static void catchIt(int number) { caught = number; }

static void* run(void* given)
{
    errno = 5;
    *(int*)given += 1;
    return given;
}

int main(int argc, char** argv)
{
    assert(argc == 3 && strcmp(argv[2], "two") == 0);
    int value = 7;
    pthread_t thread;
    errno = 0;
    assert(pthread_create(&thread, NULL, run, &value) == 0);
    void* given = NULL;
    assert(pthread_join(thread, &given) == 0 && given == &value && value == 8);
    assert(errno == 0); /* one for each thread */

    struct stat found;
    assert(stat(argv[0], &found) == 0 && S_ISREG(found.st_mode) && found.st_size > 1000);
    assert(stat("/nowhere", &found) == -1 && errno == ENOENT);

    struct sigaction action = {.sa_handler = catchIt};
    assert(sigaction(SIGUSR1, &action, NULL) == 0 && raise(SIGUSR1) == 0 && caught == SIGUSR1);

    const time_t then = 1700000000;
    struct tm date;
    assert(gmtime_r(&then, &date) == &date && date.tm_year == 123 && date.tm_mon == 10 && date.tm_mday == 14);
    assert(sysconf(_SC_PAGESIZE) == 4096 && sysconf(_SC_NPROCESSORS_ONLN) > 0);

    assert(system("exit 0") == 0);
    const int status = system("exit 3");
    assert(WIFEXITED(status) && WEXITSTATUS(status) == 3);
    puts("Android 6's C library runs");
    return 0;
}
