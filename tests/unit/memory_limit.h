/* Can a test limit the memory of its own process? */
#ifndef TESTS_MEMORY_LIMIT_H
#define TESTS_MEMORY_LIMIT_H

#ifndef __has_feature
#define __has_feature(x) 0
#endif
/* The address and the thread sanitizer need more address space than the test leaves them. */
#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__) ||                               \
    __has_feature(address_sanitizer) || __has_feature(thread_sanitizer)
enum { CAN_LIMIT_MEMORY = 0 };
#else
enum { CAN_LIMIT_MEMORY = 1 };
#endif

#endif
