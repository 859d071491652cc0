/* What geometry and structure cost within a review: the time between a rule's question to a
 * calculator and its answer, summed up over a review. roof DESIGN BOOK BOOKS-DIR CATALOGUES-DIR
 * The linker hands us the calls (--wrap=calculator_run), so the product itself keeps no clock; what
 * the clock costs is measured too and taken off. */
#include <string.h>

#include "calculator.h"
#include "measure.h"
#include "plumbrule/plumbrule.h"

enum { WARM_UP = 20, ROUNDS = 400 };

static struct {
    int depth;
    double spent;
    size_t questions;
} clock_state;

bool __real_calculator_run(const struct calculator *, struct amount *, const struct object *,
                           const struct amount *, struct working *);
bool __wrap_calculator_run(const struct calculator *, struct amount *, const struct object *,
                           const struct amount *, struct working *);

bool __wrap_calculator_run(const struct calculator *calculator, struct amount *results,
                           const struct object *about, const struct amount *inputs,
                           struct working *working)
{
    double start = clock_state.depth++ == 0 ? now() : 0;
    bool is_good = __real_calculator_run(calculator, results, about, inputs, working);
    if (--clock_state.depth == 0) {
        clock_state.spent += now() - start;
        clock_state.questions++;
    }
    return is_good;
}

static double clock_cost(void)
{
    double start = now(), sum = 0;
    for (int i = 0; i < 100000; i++)
        sum += now();
    return sum > 0 ? (now() - start) / 100000 : 0;
}

int main(int count, char **words)
{
    struct plumbrule *plumbrule;
    struct series whole, part;
    double tick = clock_cost();
    if (count != 5 || !plumbrule_open(&plumbrule))
        return 64;
    const char *books[] = {words[2], NULL}, *shelves[] = {words[3], NULL},
               *catalogues[] = {words[4], NULL};
    struct plumbrule_options options = {.books = books,
                                        .book_directories = shelves,
                                        .catalogue_directories = catalogues,
                                        .format = "text"};
    series_open(&whole, "warm review, text report", ROUNDS);
    series_open(&part, "of it geometry and structure", ROUNDS);
    for (int round = 0; round < WARM_UP + ROUNDS; round++) {
        const char *report;
        size_t length;
        clock_state.spent = 0;
        clock_state.questions = 0;
        double start = now();
        int end = plumbrule_check(&report, &length, plumbrule, words[1], &options);
        double took = now() - start;
        if (end != PLUMBRULE_STANDS || length == 0) {
            fprintf(stderr, "the design does not stand:\n%s\n", report);
            return 1;
        }
        if (round < WARM_UP)
            continue;
        whole.samples[whole.count++] = took;
        part.samples[part.count++] = clock_state.spent - (double)clock_state.questions * tick;
    }
    series_write(&whole);
    series_write(&part);
    printf("  %zu questions of rules to calculators; share of the review %.0f %%   (aim: at most "
           "3000 µs)\n",
           clock_state.questions, 100 * series_at(&part, 0.5) / series_at(&whole, 0.5));
    free(whole.samples);
    free(part.samples);
    plumbrule_close(plumbrule);
    return 0;
}
