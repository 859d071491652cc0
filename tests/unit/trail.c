/* What a kept answer rests on is noted again with each finding that it serves, whoever asked
 * first. */
#include "calculator.h"
#include "check.h"

/* Things of no trade: where their facts stand is all that is asked of them. */
static const struct object first = {.first_fact = 0}, second = {.first_fact = 8},
                           third = {.first_fact = 16};
static int runs; /* of any calculator */

static bool answer(struct amount *results, double number)
{
    runs++;
    results[0] = amount_of_number(number);
    return true;
}

static bool run_base(struct amount *results, const struct object *about,
                     const struct amount *inputs, struct working *working)
{
    (void)about, (void)inputs;
    working_read(working, &first, 1);
    working_read(working, &first, 0);
    return answer(results, 1);
}

static bool run_broken(struct amount *results, const struct object *about,
                       const struct amount *inputs, struct working *working)
{
    (void)results, (void)about, (void)inputs;
    working_read(working, &third, 2);
    return working_beyond(working, "as asked");
}

static const struct parameter number = {.name = "answer", .type = AMOUNT_NUMBER};
#define METHOD(NAME, RUN)                                                                          \
    {                                                                                              \
        .name = NAME, .about_kind = KIND_module, .results = &number, .result_count = 1, .run = RUN \
    }
static const struct calculator base = METHOD("base", run_base),
                               broken = METHOD("broken", run_broken);

static bool ask(struct working *working, const struct calculator *calculator)
{
    struct amount results[CALCULATOR_RESULTS];
    return calculator_run(calculator, results, &first, NULL, working);
}

static bool run_on_base(struct amount *results, const struct object *about,
                        const struct amount *inputs, struct working *working)
{
    (void)about, (void)inputs;
    working_read(working, &second, 3);
    if (!ask(working, &base))
        return false;
    working_read(working, &first, 0); /* the base has it */
    return answer(results, 2);
}

static bool run_beside(struct amount *results, const struct object *about,
                       const struct amount *inputs, struct working *working)
{
    (void)about, (void)inputs;
    if (!ask(working, &base))
        return false;
    bool is_good = ask(working, &broken); /* it can do without */
    working->stop.kind = STOP_NONE;
    return !is_good && answer(results, 3);
}

static const struct calculator on_base = METHOD("on_base", run_on_base),
                               beside = METHOD("beside", run_beside);

static bool reads(const struct working *working, size_t count, const struct fact_read *expected)
{
    bool is_same = working->read_count == count;
    for (size_t i = 0; i < count && is_same; i++)
        is_same = working->reads[i].object == expected[i].object &&
                  working->reads[i].slot == expected[i].slot;
    return is_same;
}
#define READS(WORKING, ...)                                                                        \
    reads(WORKING, sizeof((const struct fact_read[]){__VA_ARGS__}) / sizeof(struct fact_read),     \
          (const struct fact_read[]){__VA_ARGS__})

static void check_again(struct working *working)
{
    working_start(working);
    CHECK(ask(working, &on_base) && runs == 2, "worked out, with what it stands on");
    CHECK(READS(working, {&second, 3}, {&first, 1}, {&first, 0}), "each fact once, in order");
    CHECK(ask(working, &on_base) && runs == 2 && working->read_count == 3, "asked again: the same");
    working_start(working);
    CHECK(working->read_count == 0, "the next finding rests on nothing yet");
    CHECK(ask(working, &on_base) && runs == 2, "its answer is told");
    CHECK(READS(working, {&second, 3}, {&first, 1}, {&first, 0}), "and rests on the same facts");
}

/* Both stand on what another has noted in the same finding; each must bring it all the same. */
static void check_who_comes_second(struct working *working)
{
    working_start(working);
    working_read(working, &first, 0);
    CHECK(ask(working, &base) && ask(working, &on_base) && ask(working, &beside) && runs == 3,
          "the base once, and each that stands on it");
    CHECK(READS(working, {&first, 0}, {&first, 1}, {&second, 3}, {&third, 2}), "all, once");
    working_start(working);
    CHECK(ask(working, &on_base), "alone in a finding");
    CHECK(READS(working, {&second, 3}, {&first, 1}, {&first, 0}), "it brings the base's facts");
    working_start(working);
    CHECK(ask(working, &beside) && runs == 3, "told");
    CHECK(READS(working, {&first, 1}, {&first, 0}, {&third, 2}),
          "and with it what a refusal had read");
    working_start(working);
    CHECK(ask(working, &base), "the base alone");
    CHECK(READS(working, {&first, 1}, {&first, 0}), "brings no more than its own");
}

static void with_working(void (*check)(struct working *))
{
    struct arena *arena = arena_new();
    struct working working = {.arena = arena, .is_lasting = true};
    runs = 0;
    check(&working);
    working_close(&working);
    arena_free(arena);
}

int main(void)
{
    with_working(check_again);
    with_working(check_who_comes_second);
    return checks_end();
}
