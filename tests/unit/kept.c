/* Answers kept for one review: told again to the bit with their steps, and never to another
 * question. */
#include "kept.h"

#include "calculator_trial.h"
#include "parameter.h"

/* A calculator of no trade: what is asked of it is all that matters. */
static const struct parameter inputs_of_trial[] = {
    {.name = "length", .type = AMOUNT_QUANTITY, .measure = LENGTH, .unit = "in"},
    {.name = "factor", .type = AMOUNT_NUMBER, .unit = ""},
    {.name = "kind", .type = AMOUNT_WORD, .is_optional = true},
    {.name = "wet", .type = AMOUNT_YESNO, .is_optional = true},
};
static const struct parameter results_of_trial[] = {
    {.name = "answer", .type = AMOUNT_QUANTITY, .measure = LENGTH, .unit = "in"},
    {.name = "governs", .type = AMOUNT_WORD},
};
static const struct calculator asked = {.name = "asked",
                                        .inputs = inputs_of_trial,
                                        .input_count = 4,
                                        .results = results_of_trial,
                                        .result_count = 2};
static const struct calculator other = {.name = "other",
                                        .inputs = inputs_of_trial,
                                        .input_count = 4,
                                        .results = results_of_trial,
                                        .result_count = 2};

struct question {
    struct amount inputs[4], results[2];
};

static struct question ask(double length, double factor, const char *kind)
{
    return (struct question){
        .inputs = {amount_as(length, "in"), amount_of_number(factor), amount_of_word(kind)},
        .results = {amount_as(length * factor, "in"), amount_of_word("bending")}};
}

/* Is it told, and is what is told the length? NAN: not told. */
static double told(struct working *working, const struct calculator *calculator,
                   const struct object *about, const struct question *question)
{
    struct amount results[CALCULATOR_RESULTS] = {{.type = AMOUNT_NONE}};
    if (!kept_tell(results, calculator, about, question->inputs, working))
        return NAN;
    CHECK_TEXT(results[1].word, "bending", "each result is told");
    return quantity_as(results[0].quantity, "in");
}

static void add(struct working *working, const struct object *about,
                const struct question *question, size_t first_step)
{
    kept_add(&asked, about, question->inputs, question->results, first_step, working);
}

static void check_the_same_question(struct trial *trial)
{
    struct working *working = &trial->working;
    struct question question = ask(12, 3, "dry");
    CHECK(isnan(told(working, &asked, NULL, &question)), "nothing is told before it is kept");
    add(working, NULL, &question, 0);
    CHECK(working->kept != NULL, "the first answer opens the table");
    CHECK_NEAR(told(working, &asked, NULL, &question), 36, 0, "the same question is told again");
    char words[] = "dry";
    question.inputs[2] = amount_of_word(words);
    CHECK_NEAR(told(working, &asked, NULL, &question), 36, 0,
               "words are compared, not their place");
}

/* Whatever is not the same to the last bit is another question. */
static void check_other_questions(struct trial *trial)
{
    struct working *working = &trial->working;
    const struct object one = {.path = "one"}, two = {.path = "two"};
    struct question question = ask(12, 3, "dry"), not_this;
    add(working, &one, &question, 0);
    CHECK(isnan(told(working, &asked, NULL, &question)) &&
              isnan(told(working, &asked, &two, &question)),
          "an answer about one thing is not told of another, nor of none");
    CHECK(isnan(told(working, &other, &one, &question)), "nor of another calculator");
    not_this = ask(nextafter(12, 13), 3, "dry");
    CHECK(isnan(told(working, &asked, &one, &not_this)), "the last bit counts");
    not_this = ask(12, -3, "dry");
    CHECK(isnan(told(working, &asked, &one, &not_this)), "so does a number");
    not_this = ask(12, 3, "wet");
    CHECK(isnan(told(working, &asked, &one, &not_this)), "and a word");
    not_this = question;
    not_this.inputs[0] = amount_as(1, "ft");
    CHECK(isnan(told(working, &asked, &one, &not_this)),
          "the same length in another unit is shown otherwise");
    not_this = question;
    not_this.inputs[2] = (struct amount){.type = AMOUNT_NONE};
    CHECK(isnan(told(working, &asked, &one, &not_this)), "an input left out is no word");
    not_this = question;
    not_this.inputs[3] = (struct amount){.type = AMOUNT_YESNO, .yes = true};
    CHECK(isnan(told(working, &asked, &one, &not_this)), "nor is a yes the same as nothing");
    add(working, &one, &not_this, 0);
    not_this.inputs[3].yes = false;
    CHECK(isnan(told(working, &asked, &one, &not_this)), "nor a no");
    not_this.inputs[3].yes = true;
    CHECK_NEAR(told(working, &asked, &one, &not_this), 36, 0, "the yes itself is");
}

static void check_zero_has_a_sign(struct trial *trial)
{
    struct question zero = ask(0, 3, "dry"), below = zero;
    below.inputs[0].quantity.value = -0.0;
    add(&trial->working, NULL, &zero, 0);
    CHECK(isnan(told(&trial->working, &asked, NULL, &below)), "minus zero is another input");
}

/* Dates have no answer kept, so that none is told wrongly. */
static void check_dates(struct trial *trial)
{
    struct question question = ask(12, 3, "dry");
    question.inputs[3] = (struct amount){.type = AMOUNT_DATE};
    add(&trial->working, NULL, &question, 0);
    CHECK(isnan(told(&trial->working, &asked, NULL, &question)), "a date is worked out each time");
}

/* Steps: told as they were, only those of this answer, and only where the text lasts. */
static void check_steps(struct trial *trial)
{
    struct working *working = &trial->working;
    struct question question = ask(12, 3, "dry");
    working->keeps_steps = true;
    working_step(working, NULL, "before");
    size_t first = working->step_count;
    working_step(working, "a table", "12 in × 3 = 36 in");
    add(working, NULL, &question, first);
    CHECK(isnan(told(working, &asked, NULL, &question)),
          "steps in an arena that does not last are not kept");
    working->is_lasting = true;
    add(working, NULL, &question, first);
    working_start(working);
    CHECK(working->step_count == 0, "the next finding begins without steps");
    CHECK_NEAR(told(working, &asked, NULL, &question), 36, 0, "its answer is told again");
    CHECK(working->step_count == 1 && trial_says(trial, "12 in × 3 = 36 in"),
          "with its own step alone");
    CHECK_TEXT(working->steps[0].source, "a table", "and the step's source");
    working->keeps_steps = false;
    CHECK(isnan(told(working, &asked, NULL, &question)),
          "an answer with steps is another than one without");
    add(working, NULL, &question, working->step_count);
    CHECK_NEAR(told(working, &asked, NULL, &question), 36, 0, "which is kept beside it");
    CHECK(working->step_count == 1, "and adds no step");
}

/* Where steps show the inputs as written, the writing is part of the question. */
static void check_writing(struct trial *trial)
{
    struct working *working = &trial->working;
    struct question question = ask(12, 3, "dry"), again;
    char written[] = "12.0 in";
    question.inputs[0].quantity.written = written;
    again = question;
    add(working, NULL, &question, 0);
    again.inputs[0].quantity.written = "12 in";
    CHECK_NEAR(told(working, &asked, NULL, &again), 36, 0, "without steps the writing is nothing");
    working->keeps_steps = working->is_lasting = true;
    add(working, NULL, &question, working->step_count);
    CHECK(isnan(told(working, &asked, NULL, &again)), "with steps it is another question");
    written[0] = '?'; /* the asker's text goes; the kept copy stays */
    again.inputs[0].quantity.written = "12.0 in";
    CHECK_NEAR(told(working, &asked, NULL, &again), 36, 0, "the writing is kept as a copy");
    question = ask(13, 3, "dry");
    question.results[0].quantity.written = "39.0 in";
    add(working, NULL, &question, working->step_count);
    CHECK(isnan(told(working, &asked, NULL, &question)), "a result shown as written is not kept");
}

/* As many answers as there is room for: each is its own question's, what is over is worked out. */
static void check_many(struct trial *trial)
{
    enum { MANY = 9000, ROOM = 8192 };
    size_t right = 0, wrong = 0, not_told = 0;
    for (int i = 0; i < MANY; i++) {
        struct question question = ask(i, 2, "dry");
        add(&trial->working, NULL, &question, 0);
    }
    for (int i = 0; i < MANY; i++) {
        struct question question = ask(i, 2, "dry");
        double is = told(&trial->working, &asked, NULL, &question);
        if (isnan(is))
            not_told++;
        else if (fabs(is - 2.0 * i) > 1e-6)
            wrong++;
        else
            right++;
    }
    CHECK(wrong == 0, "no answer is told to another question");
    CHECK(right == ROOM && not_told == MANY - ROOM, "the table ends at its room");
}

static void check_end(struct trial *trial)
{
    struct question question = ask(12, 3, "dry");
    add(&trial->working, NULL, &question, 0);
    working_close(&trial->working);
    trial->working.kept = NULL;
    CHECK(isnan(told(&trial->working, &asked, NULL, &question)), "nothing outlives its review");
    kept_free(NULL);
}

int main(void)
{
    void (*const checks[])(struct trial *) = {check_the_same_question,
                                              check_other_questions,
                                              check_zero_has_a_sign,
                                              check_dates,
                                              check_steps,
                                              check_writing,
                                              check_many,
                                              check_end};
    for (size_t i = 0; i < sizeof checks / sizeof *checks; i++) {
        struct trial trial;
        trial_open(&trial);
        trial.working.keeps_steps = false;
        checks[i](&trial);
        trial_close(&trial);
    }
    return checks_end();
}
