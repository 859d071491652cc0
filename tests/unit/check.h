/* A test harness in one page: each check carries a sentence, a failed one is told and counted. */
#ifndef TESTS_CHECK_H
#define TESTS_CHECK_H
#include <math.h>
#include <stdbool.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static int checks_done, checks_failed;

static inline bool check_that(bool holds, const char *file, int line, const char *sentence)
{
    checks_done++;
    if (!holds) {
        checks_failed++;
        fprintf(stderr, "%s:%d: not so: %s\n", file, line, sentence);
    }
    return holds;
}

static inline bool check_text(const char *is, const char *should, const char *file, int line,
                              const char *sentence)
{
    bool holds = is != NULL && strcmp(is, should) == 0;
    check_that(holds, file, line, sentence);
    if (!holds)
        fprintf(stderr, "    is:     %s\n    should: %s\n", is ? is : "(nothing)", should);
    return holds;
}

static inline bool check_near(double is, double should, double within, const char *file, int line,
                              const char *sentence)
{
    bool holds = fabs(is - should) <= within;
    check_that(holds, file, line, sentence);
    if (!holds)
        fprintf(stderr, "    is:     %.12g\n    should: %.12g ± %g\n", is, should, within);
    return holds;
}

#define CHECK(condition, sentence)       check_that((condition), __FILE__, __LINE__, (sentence))
#define CHECK_TEXT(is, should, sentence) check_text((is), (should), __FILE__, __LINE__, (sentence))
#define CHECK_NEAR(is, should, within, sentence)                                                   \
    check_near((is), (should), (within), __FILE__, __LINE__, (sentence))

/* The last line of a test's main. A test that checked nothing has failed. */
static inline int checks_end(void)
{
    fprintf(stderr, "%d checks, %d failed\n", checks_done, checks_failed);
    return checks_failed > 0 || checks_done == 0 ? EXIT_FAILURE : EXIT_SUCCESS;
}

#endif
