/* What is in force of a stack of books on a day: the resolution, sentence by sentence. */
#include "books_trial.h"

#define STACK "pell-harbor tidewire sunny-hull"

/* ---- values ------------------------------------------------------------------------------- */

static void check_value(const char *folder, const char *names, const char *on, const char *name,
                        const char *should, const char *sentence)
{
    struct trial trial = resolve(folder, names, on);
    CHECK(trial.is_good, "the stack resolves");
    CHECK_TEXT(value_text(&trial, name), should, sentence);
    end(&trial);
}

static void test_dates(void)
{
    check_value("stack", "green-state", "2019-12-31", "ground_snow", "unknown",
                "a code not adopted yet brings no value, and what amends it is no mistake");
    check_value("stack", "green-state", "2020-01-01", "ground_snow", "30 psf by green-state",
                "an adoption holds from its own day on; an entry may be older");
    check_value("stack", "green-state", "2022-06-30", "ground_snow", "30 psf by green-state",
                "the day before the next entry the old one holds");
    check_value("stack", "green-state", "2022-07-01", "ground_snow", "35 psf by green-state",
                "an entry holds from its own day on");
    check_value("stack", "green-state", "2025-12-31", "ground_snow", "35 psf by green-state",
                "a series holds up to the day before its repeal");
    check_value("stack", "green-state", "2026-01-01", "ground_snow", "not in force",
                "from the day of the repeal on there is none");
    check_value("stack", "pell-harbor", "2021-12-31", "sign_height", "not in force",
                "a declared value is known before its first day");
    check_value("stack", "pell-harbor", "2022-01-01", "sign_height", "3/8 in by pell-harbor",
                "a number prints as it was written");
    check_value("stack", "pell-harbor", "2025-05-31", "ridge_setback", "24 in by pell-harbor",
                "an entry with an end holds up to the day before");
    check_value("stack", "pell-harbor", "2025-06-01", "ridge_setback", "20 in by green-state",
                "after its end what stands below holds again");
}

static void test_editions_of_values(void)
{
    check_value("stack", "green-state", "2022-12-31", "ridge_setback", "12 in by roofcode",
                "the edition in force gives its own number");
    check_value("stack", "green-state", "2023-01-01", "old_clearance", "not in force",
                "a value without a number in the edition in force is not in force");
    check_value("stack", "roofcode@2018", "2023-01-01", "ridge_setback", "12 in by roofcode",
                "a code named directly holds at the edition named");
    check_value("stack", "roofcode@2021", "2001-01-01", "ridge_setback", "18 in by roofcode",
                "a code's own numbers have no day");
    check_value("stack", "roofcode@2021", "2022-01-01", "wind_speed", "not in force",
                "a value given above has no number where nobody gives it");
    check_value("wrong", "dated-code@2021", "2021-12-31", "gap", "1 in by dated-code",
                "before the erratum the edition's number holds");
    check_value("wrong", "dated-code@2021", "2022-01-01", "gap", "2 in by dated-code",
                "an erratum of the code holds from its day on");
}

static void test_kinds(void)
{
    check_value("stack", "roofcode@2018", "2022-01-01", "coverage_limit", "0.33 by roofcode",
                "a share may be written in percent");
    check_value("stack", "roofcode@2018", "2022-01-01", "gutters", "no by roofcode", "yes or no");
    check_value("stack", "roofcode@2018", "2022-01-01", "exposure", "open by roofcode", "a word");
    struct trial trial = resolve("stack", "green-state", "2022-01-01");
    const struct value *value = rulebook_find_value(trial.rulebook, "wind_speed");
    CHECK_TEXT(value->declaration->basis, "strength level", "a basis is of the declaration");
    CHECK_TEXT(value->declared_by->name, "roofcode", "who declares it");
    CHECK(value->declaration->measure == SPEED && value->declaration->stricter == STRICTER_LARGER,
          "the kind and the stricter side");
    value = rulebook_find_value(trial.rulebook, "ridge_setback");
    CHECK_TEXT(value->entry->cite, "R3.1", "the entry keeps its citation");
    CHECK_TEXT(value->edition, "2018", "and the edition of its book");
    CHECK(value->entry->place.line == 2 && value->entry->place.column == 28, "and its place");
    end(&trial);
}

static void check_elevation(const struct value *value, double feet, const char *should)
{
    char buffer[128] = "none";
    const struct amount *amount = value_at_elevation(value, quantity_of(feet, "ft"));
    if (amount)
        amount_write(buffer, sizeof buffer, *amount, NULL, 12);
    CHECK_TEXT(buffer, should, "the band of the elevation");
}

static void test_bands(void)
{
    struct trial trial = resolve("stack", "green-state", "2022-01-01");
    const struct value *value = rulebook_find_value(trial.rulebook, "wind_speed");
    CHECK(value->state == VALUE_IN_FORCE && value->is.type == AMOUNT_NONE && value->entry->bands,
          "a value by elevation has no one number");
    check_elevation(value, -20, "110 mph");
    check_elevation(value, 2000, "110 mph");
    check_elevation(value, 2001, "120 mph");
    check_elevation(value, 4000, "120 mph");
    check_elevation(value, 4001, "none");
    check_elevation(rulebook_find_value(trial.rulebook, "ground_snow"), 9000, "30 psf");
    check_elevation(rulebook_find_value(trial.rulebook, "gutters"), 0, "no");
    end(&trial);
    trial = resolve("stack", "roofcode@2018", "2022-01-01");
    check_elevation(rulebook_find_value(trial.rulebook, "wind_speed"), 0, "none");
    end(&trial);
}

/* ---- who wins ----------------------------------------------------------------------------- */

static void test_stack_of_four(void)
{
    struct trial trial = resolve("stack", STACK, "2024-06-01");
    static const char *const order[] = {"roofcode",    "wirecode", "green-state",
                                        "pell-harbor", "tidewire", "sunny-hull"};
    CHECK(trial.is_good && trial.problems.count == 0, "a stack of four without a problem");
    CHECK(trial.rulebook->book_count == 6, "each book once");
    for (size_t i = 0; i < 6 && i < trial.rulebook->book_count; i++)
        CHECK_TEXT(trial.rulebook->books[i].book->name, order[i], "lowest first");
    CHECK_TEXT(trial.rulebook->books[0].edition, "2021", "a later adoption takes the place");
    CHECK_TEXT(trial.rulebook->books[0].adopted_by->name, "green-state", "who adopts it");
    CHECK(trial.rulebook->books[0].place.line == 8, "and where");
    CHECK(!trial.rulebook->books[3].adopted_by, "a book that the caller named");
    CHECK_TEXT(value_text(&trial, "ridge_setback"), "30 in by sunny-hull", "the highest wins");
    const struct value *value = rulebook_find_value(trial.rulebook, "ridge_setback");
    CHECK_TEXT(acts_text(&trial, value->acts, value->act_count),
               "roofcode adds ever, green-state amends 2023-01-01, sunny-hull amends 2023-01-01, "
               "pell-harbor amends 2024-06-01",
               "the history of a value, by date");
    CHECK_TEXT(value_text(&trial, "largest_export"), "10 kW by tidewire", "a utility adds");
    CHECK_TEXT(value_text(&trial, "crew_size"), "2 by sunny-hull", "a company adds");
    CHECK(!rulebook_find_value(trial.rulebook, "ridge"), "what nobody declares is not found");
    end(&trial);
}

static void test_adoptions_by_date(void)
{
    struct trial trial = resolve("stack", "green-state", "2022-12-31");
    CHECK_TEXT(trial.rulebook->books[0].edition, "2018", "the edition of the day before");
    CHECK(trial.rulebook->book_count == 3, "two codes and the state");
    end(&trial);
    trial = resolve("stack", "green-state", "2025-01-01");
    CHECK(trial.rulebook->book_count == 2, "an adoption ends on the day of its repeal");
    CHECK(!rulebook_find_rule(trial.rulebook, "wirecode/busbar"), "and its rules go with it");
    end(&trial);
    trial = resolve("stack", "green-state", "2024-12-31");
    CHECK(rulebook_find_rule(trial.rulebook, "wirecode/busbar") != NULL, "the day before it holds");
    end(&trial);
    trial = resolve("wrong", "leaves", "2023-01-01");
    CHECK(trial.is_good && trial.problems.count == 0 && trial.rulebook->book_count == 1,
          "where the latest adoption is repealed, the one before does not come back");
    end(&trial);
    trial = resolve("wrong", "later-unknown", "2022-01-01");
    CHECK(trial.is_good && trial.problems.count == 0, "what is adopted later is not asked for yet");
    end(&trial);
}

static void test_diamond(void)
{
    check_value("wrong", "decided", "2022-06-01", "ground_snow", "20 psf by decided",
                "who adopts both rivals decides");
    check_value("wrong", "undecided", "2021-12-31", "ground_snow", "not in force",
                "no rivals before their day");
    check_value("wrong", "left right", "2022-06-01", "ground_snow", "40 psf by right",
                "a book named later counts as adopting the earlier");
    check_value("wrong", "right left", "2022-06-01", "ground_snow", "30 psf by left",
                "in the other order the other wins");
    struct trial trial = resolve("wrong", "undecided", "2022-06-01");
    CHECK(trial.is_good, "rivals leave the rest to be resolved");
    CHECK_TEXT(told(&trial),
               "wrong/right/book.yaml:7:24 rivals wrong/left/book.yaml:7\n"
               "wrong/right/book.yaml:9:12 rivals wrong/left/book.yaml:8\n",
               "rivals are cited, both");
    CHECK_TEXT(value_text(&trial, "ground_snow"), "undecided", "and nobody has won");
    CHECK_TEXT(value_text(&trial, "ridge_setback"), "18 in by roofcode", "the rest stands");
    CHECK_TEXT(rule_text(&trial, "roofcode/ridge"), "holds wrong/roofcode/ridge.lua of roofcode",
               "a rule in dispute holds");
    CHECK(says(&trial, "rivals", "left and right both give the value ground_snow"), "by name");
    check_excerpts(&trial);
    end(&trial);
    trial = resolve("wrong", "over-stranger", "2022-06-01");
    CHECK_TEXT(told(&trial),
               "wrong/stranger/book.yaml:8:19 rivals wrong/roofcode/values.yaml:1\n"
               "wrong/stranger/book.yaml:9:11 rivals wrong/roofcode/book.yaml:0\n",
               "who amends a code without adopting it is the code's rival");
    CHECK_TEXT(value_text(&trial, "ground_snow"), "50 psf by stranger",
               "but may give what is given above");
    end(&trial);
}

/* ---- rules -------------------------------------------------------------------------------- */

static void check_rule(const char *names, const char *on, const char *id, const char *should,
                       const char *sentence)
{
    struct trial trial = resolve("stack", names, on);
    CHECK_TEXT(rule_text(&trial, id), should, sentence);
    end(&trial);
}

static void test_rule_texts(void)
{
    check_rule("roofcode@2018", "2022-01-01", "roofcode/second-pathway",
               "holds stack/codes/roofcode/second-pathway.lua of roofcode",
               "a rule for all editions");
    check_rule("roofcode@2021", "2022-01-01", "roofcode/second-pathway",
               "holds stack/codes/roofcode/2021/second-pathway.lua of roofcode",
               "an edition's own text");
    check_rule("roofcode@2018", "2022-01-01", "roofcode/old-rule",
               "holds stack/codes/roofcode/2018/old-rule.lua of roofcode",
               "a rule of one edition only");
    check_rule("roofcode@2021", "2022-01-01", "roofcode/old-rule", "unknown",
               "is not in the others");
    check_rule("roofcode@2021", "2022-01-01", "roofcode/forgotten",
               "deleted stack/codes/roofcode/forgotten.lua of roofcode",
               "a code drops a rule of its own in one edition");
    check_rule("roofcode@2018", "2022-01-01", "roofcode/forgotten",
               "holds stack/codes/roofcode/forgotten.lua of roofcode", "and not in the other");
    check_rule("roofcode@2021", "2022-01-01", "roofcode/no-rule", "unknown",
               "what lies in cases/ is no rule");
    check_rule("pell-harbor", "2024-01-01", "pell-harbor/ridge-here", "unknown",
               "a text that replaces another is no rule of its own");
}

static void test_changes(void)
{
    check_rule("pell-harbor", "2023-12-31", "roofcode/ridge",
               "holds stack/codes/roofcode/ridge.lua of roofcode", "before the day of replacement");
    check_rule("pell-harbor", "2024-01-01", "roofcode/ridge",
               "holds stack/towns/pell-harbor/ridge-here.lua of pell-harbor",
               "a replacement keeps the id and gives the text");
    check_rule("pell-harbor", "2024-05-31", "roofcode/second-pathway",
               "deleted stack/codes/roofcode/2021/second-pathway.lua of roofcode",
               "what the state deletes");
    check_rule("pell-harbor", "2024-06-01", "roofcode/second-pathway",
               "holds stack/codes/roofcode/2021/second-pathway.lua of roofcode",
               "the town restores");
    check_rule("green-state", "2024-06-01", "roofcode/second-pathway",
               "deleted stack/codes/roofcode/2021/second-pathway.lua of roofcode",
               "for itself, not for the state");
    check_rule("pell-harbor", "2024-12-31", "pell-harbor/sign",
               "holds stack/towns/pell-harbor/sign.lua of pell-harbor", "a town adds a rule");
    check_rule("pell-harbor", "2025-01-01", "pell-harbor/sign",
               "deleted stack/towns/pell-harbor/sign.lua of pell-harbor", "and drops it");
    struct trial trial = resolve("wrong", "drops@3", "2022-01-01");
    CHECK_TEXT(told(&trial), "", "a code drops a rule in one edition after the other");
    CHECK_TEXT(rule_text(&trial, "drops/gap"), "deleted wrong/drops/gap.lua of drops", "in both");
    end(&trial);
    trial = resolve("wrong", "leaves", "2022-02-28");
    CHECK_TEXT(rule_text(&trial, "roofcode/ridge"), "deleted wrong/roofcode/ridge.lua of roofcode",
               "a deletion with an end");
    resolve_again(&trial, "leaves", "2022-03-01");
    CHECK_TEXT(rule_text(&trial, "roofcode/ridge"), "holds wrong/roofcode/ridge.lua of roofcode",
               "ends on that day");
    end(&trial);
}

static void test_acts(void)
{
    struct trial trial = resolve("stack", STACK, "2025-01-01");
    CHECK_TEXT(rule_acts(&trial, "roofcode/second-pathway"),
               "green-state adopts 2023-01-01, green-state deletes 2023-01-01, pell-harbor "
               "restores 2024-06-01",
               "the history of a rule, by date");
    CHECK_TEXT(rule_acts(&trial, "roofcode/ridge"),
               "green-state adopts 2023-01-01, pell-harbor replaces 2024-01-01", "replaced");
    CHECK_TEXT(rule_acts(&trial, "pell-harbor/sign"),
               "pell-harbor adds ever, pell-harbor deletes 2025-01-01", "added and deleted");
    const struct rule *rule = rulebook_find_rule(trial.rulebook, "roofcode/ridge");
    CHECK_TEXT(rule->acts[0].cite, "Act 19", "an adoption's citation");
    CHECK_TEXT(rule->acts[1].cite, "Ordinance 10", "a replacement's citation");
    CHECK(rule->acts[1].place.line == 17, "and its line");
    CHECK_TEXT(rule->book->name, "roofcode", "whose rule it is stays");
    CHECK_TEXT(rule->edition, "2021", "in its edition");
    end(&trial);
}

static void test_rule_order(void)
{
    struct trial trial = resolve("stack", STACK, "2024-06-01");
    static const char *const ids[] = {
        "roofcode/forgotten",  "roofcode/ridge",   "roofcode/second-pathway", "wirecode/busbar",
        "pell-harbor/landing", "pell-harbor/sign", "tidewire/export",         "sunny-hull/tidy"};
    CHECK(trial.rulebook->rule_count == 8, "all rules, deleted ones included");
    for (size_t i = 0; i < 8 && i < trial.rulebook->rule_count; i++)
        CHECK_TEXT(trial.rulebook->rules[i].id, ids[i], "by book, then by id");
    for (size_t i = 1; i < trial.rulebook->value_count; i++)
        CHECK(strcmp(trial.rulebook->values[i - 1].name, trial.rulebook->values[i].name) < 0,
              "values by name");
    end(&trial);
}

/* ---- mistakes ----------------------------------------------------------------------------- */

static void check_told(const char *names, const char *on, bool is_good, const char *should,
                       const char *sentence)
{
    struct trial trial = resolve("wrong", names, on);
    CHECK(trial.is_good == is_good && (trial.rulebook != NULL) == is_good, sentence);
    CHECK_TEXT(told(&trial), should, sentence);
    check_excerpts(&trial);
    for (size_t i = 0; i < trial.problems.count; i++)
        CHECK(trial.problems.items[i].weight == PROBLEM_INPUT, "of the input");
    end(&trial);
}

static void test_no_stack(void)
{
    check_told("itself", "2022-01-01", true, "wrong/itself/book.yaml:7:12 adopts-itself\n",
               "a book that adopts itself; its other adoptions stand");
    check_told("round-a", "2022-01-01", false,
               "wrong/round-c/book.yaml:6:10 circle wrong/round-a/book.yaml:6\n",
               "a circle cites the line that closes it and the first one");
    check_told("round-a", "2021-12-31", true, "", "a circle is one only where all of it is live");
    check_told("town roofcode@2021", "2022-01-01", false, "wrong/town/book.yaml:6:10 circle\n",
               "a circle by the order of the names");
    check_told("two-editions", "2021-12-31", true, "", "one edition the day before");
    check_told("two-editions", "2022-01-01", false,
               "wrong/old-state/book.yaml:6:10 editions-two wrong/two-editions/book.yaml:8\n",
               "one book at two editions cites both lines");
    check_told("roofcode@2018 town", "2022-01-01", false,
               "wrong/town/book.yaml:6:10 editions-two\n", "also against the command line");
    check_told("edition-unknown", "2022-01-01", false,
               "wrong/edition-unknown/book.yaml:6:10 edition-unknown\n", "an unknown edition");
    check_told("edition-missing", "2022-01-01", false,
               "wrong/edition-missing/book.yaml:6:10 edition-missing\n", "a code needs an edition");
    check_told("edition-needless", "2022-01-01", false,
               "wrong/edition-needless/book.yaml:6:10 edition-needless\n",
               "what has no editions takes none");
    check_told("book-unknown", "2022-01-01", false,
               "wrong/book-unknown/book.yaml:6:10 book-unknown\n", "an unknown book");
    check_told("later-unknown", "2030-01-01", false,
               "wrong/later-unknown/book.yaml:8:5 book-unknown\n", "on the day it is asked for");
    check_told("roofcode", "2022-01-01", false, "-:0:0 edition-missing\n",
               "a code named directly needs an edition");
    check_told("town@2021", "2022-01-01", false, "-:0:0 edition-needless\n", "a town does not");
    check_told("book-unknown twon edition-unknown", "2022-01-01", false,
               "-:0:0 book-unknown\nwrong/book-unknown/book.yaml:6:10 book-unknown\n"
               "wrong/edition-unknown/book.yaml:6:10 edition-unknown\n",
               "all mistakes at once");
}

static void test_words(void)
{
    struct trial trial = resolve("wrong", "book-unknown", "2022-01-01");
    CHECK(says(&trial, "book-unknown", "did you mean roofcode?"), "a near book");
    resolve_again(&trial, "edition-unknown", "2022-01-01");
    CHECK(says(&trial, "edition-unknown", "its editions are 2018, 2021"), "the editions there are");
    CHECK_TEXT(find_problem(&trial, "edition-unknown")->example,
               "{book: roofcode, edition: 2021, from: 2023-01-01}", "a right example");
    resolve_again(&trial, "roofcode", "2022-01-01");
    CHECK_TEXT(find_problem(&trial, "edition-missing")->example, "roofcode@2021",
               "a right example for the command line");
    resolve_again(&trial, "misspelt", "2022-01-01");
    CHECK(says(&trial, "value-unknown", "ground_snw; did you mean ground_snow?"), "a near value");
    CHECK(says(&trial, "rule-unknown", "did you mean roofcode/second-pathway?"), "a near rule");
    CHECK(says(&trial, "rule-unknown", "edition 2021 of roofcode has no rule"), "of an edition");
    resolve_again(&trial, "wrong-kinds", "2022-01-01");
    CHECK(says(&trial, "unit-wrong", "a pressure is needed"), "what kind is needed");
    CHECK_TEXT(find_problem(&trial, "unit-missing")->example, "is: 40 psf", "a right example");
    resolve_again(&trial, "left-behind", "2023-01-01");
    CHECK(says(&trial, "edition-other", "restate it for that edition or drop it"), "what to do");
    resolve_again(&trial, "town loose", "2023-01-01");
    CHECK(says(&trial, "company-loosens", "ground_snow of town (40 psf) stands"), "what stands");
    CHECK_TEXT(find_problem(&trial, "company-loosens")->example, "ridge_setback: 18 in, or larger",
               "which side is stricter");
    end(&trial);
}

static void test_what_is_not_there(void)
{
    check_told("misspelt", "2022-01-01", true,
               "wrong/misspelt/book.yaml:8:3 value-unknown\n"
               "wrong/misspelt/book.yaml:9:3 value-unknown\n"
               "wrong/misspelt/book.yaml:11:5 rule-unknown\n"
               "wrong/misspelt/book.yaml:12:5 rule-unknown\n"
               "wrong/misspelt/book.yaml:13:5 rule-unknown\n"
               "wrong/misspelt/book.yaml:15:5 restores-nothing\n",
               "changing what is not there");
    check_told("declares-again", "2022-01-01", true,
               "wrong/declares-again/book.yaml:8:3 value-declared-twice "
               "wrong/roofcode/values.yaml:1\n",
               "a value declared twice cites both");
    check_told("wrong-kinds", "2022-01-01", true,
               "wrong/wrong-kinds/book.yaml:9:30 unit-wrong wrong/roofcode/values.yaml:2\n"
               "wrong/wrong-kinds/book.yaml:10:30 unit-missing wrong/roofcode/values.yaml:2\n"
               "wrong/wrong-kinds/book.yaml:11:58 unit-wrong wrong/roofcode/values.yaml:3\n"
               "wrong/wrong-kinds/book.yaml:12:51 yes-no-needed wrong/roofcode/values.yaml:4\n"
               "wrong/wrong-kinds/book.yaml:13:37 word-unknown wrong/roofcode/values.yaml:5\n",
               "a number of the wrong kind, on whatever day");
    check_told("above-half", "2022-01-01", true, "wrong/half/values.yaml:1:6 bracket-not-closed\n",
               "where a values file is broken, what it may declare is not called unknown");
    check_value("wrong", "wrong-kinds", "2022-01-01", "ground_snow", "undecided",
                "and no other number takes its place");
    check_value("wrong", "declares-again", "2022-01-01", "ridge_setback", "undecided",
                "nobody knows which declaration is meant");
}

static void test_other_editions(void)
{
    static const char missing[] = "wrong/left-behind/book.yaml:11:20 edition-missing\n";
    check_told("left-behind", "2022-12-31", true, missing,
               "written for the edition in force; one does not say for which");
    check_told("left-behind", "2023-01-01", true,
               "wrong/left-behind/book.yaml:10:19 edition-other wrong/left-behind/book.yaml:8\n"
               "wrong/left-behind/book.yaml:11:20 edition-missing\n"
               "wrong/left-behind/book.yaml:14:5 edition-other wrong/left-behind/book.yaml:8\n"
               "wrong/left-behind/book.yaml:16:5 edition-other wrong/left-behind/book.yaml:8\n",
               "live under another edition: restate or drop");
    check_told("restated", "2023-01-01", true, "", "restated, or ended");
    check_told("edition-odd", "2022-01-01", true,
               "wrong/edition-odd/book.yaml:8:19 edition-unknown\n"
               "wrong/edition-odd/book.yaml:11:5 edition-missing\n",
               "an edition that does not exist, on whatever day");
    check_value("wrong", "above-odd", "2022-01-01", "own_gap", "undecided",
                "an edition of what has none");
    struct trial trial = resolve("wrong", "left-behind", "2023-01-01");
    CHECK_TEXT(value_text(&trial, "ridge_setback"), "undecided", "which number, nobody knows");
    CHECK_TEXT(value_text(&trial, "ground_snow"), "40 psf by left-behind",
               "what is given above needs no edition");
    CHECK_TEXT(rule_text(&trial, "roofcode/second-pathway"),
               "holds wrong/roofcode/second-pathway.lua of roofcode", "the rule holds");
    resolve_again(&trial, "above-left-behind", "2023-01-01");
    CHECK_TEXT(value_text(&trial, "ridge_setback"), "40 in by above-left-behind",
               "a book above it that restates decides");
    CHECK(trial.problems.count == 4, "though the one below is told still");
    end(&trial);
}

/* ---- companies and waivers ---------------------------------------------------------------- */

static void test_loosening(void)
{
    struct trial trial = resolve("wrong", "town loose", "2022-01-01");
    CHECK_TEXT(told(&trial),
               "wrong/loose/book.yaml:7:19 company-loosens wrong/roofcode/values.yaml:1\n"
               "wrong/loose/book.yaml:8:17 company-loosens wrong/town/book.yaml:8\n"
               "wrong/loose/book.yaml:9:20 company-loosens wrong/roofcode/values.yaml:3\n"
               "wrong/loose/book.yaml:10:13 company-loosens wrong/roofcode/values.yaml:4\n"
               "wrong/loose/book.yaml:11:14 company-loosens wrong/town/book.yaml:9\n"
               "wrong/loose/book.yaml:12:15 company-loosens wrong/roofcode/values.yaml:6\n"
               "wrong/loose/book.yaml:13:16 company-loosens wrong/town/book.yaml:11\n"
               "wrong/loose/book.yaml:15:5 company-loosens\n"
               "wrong/loose/book.yaml:17:5 company-loosens\n"
               "wrong/loose/book.yaml:19:5 waiver-not-authority\n",
               "a company may not loosen");
    CHECK_TEXT(value_text(&trial, "ground_snow"), "40 psf by town", "the town's value stands");
    CHECK_TEXT(value_text(&trial, "coverage_limit"), "0.33 by roofcode", "and the code's");
    CHECK_TEXT(rule_text(&trial, "roofcode/ridge"), "holds wrong/roofcode/ridge.lua of roofcode",
               "the rule stands");
    CHECK_TEXT(rule_text(&trial, "town/porch"), "holds wrong/town/porch.lua of town",
               "and its text");
    CHECK(trial.rulebook->waiver_count == 0, "and nothing is waived");
    check_excerpts(&trial);
    end(&trial);
}

static void test_tightening(void)
{
    struct trial trial = resolve("wrong", "town tight", "2022-01-01");
    CHECK_TEXT(told(&trial), "", "a company may tighten");
    CHECK_TEXT(value_text(&trial, "ground_snow"), "50 psf by tight", "where larger is stricter");
    CHECK_TEXT(value_text(&trial, "coverage_limit"), "0.25 by tight", "where smaller is");
    CHECK_TEXT(value_text(&trial, "ridge_setback"), "18 in by tight", "or leave it as it is");
    CHECK_TEXT(value_text(&trial, "wind_speed"), "125 mph by tight", "one number for all bands");
    CHECK_TEXT(rule_text(&trial, "roofcode/second-pathway"),
               "holds wrong/roofcode/second-pathway.lua of roofcode", "restore a rule");
    CHECK_TEXT(rule_text(&trial, "tight/own"), "deleted wrong/tight/own.lua of tight",
               "and drop one of its own");
    resolve_again(&trial, "town tight looser-than-tight", "2022-01-01");
    CHECK_TEXT(told(&trial),
               "wrong/looser-than-tight/book.yaml:6:24 company-loosens wrong/tight/book.yaml:8\n",
               "nor may it loosen what another company has tightened");
    resolve_again(&trial, "town level", "2022-01-01");
    CHECK_TEXT(told(&trial), "", "the same number is not looser");
    CHECK_TEXT(value_text(&trial, "coverage_limit"), "0.33 by level", "nor does it lose");
    resolve_again(&trial, "town short-bands", "2022-01-01");
    CHECK_TEXT(told(&trial),
               "wrong/short-bands/book.yaml:7:16 company-loosens wrong/town/book.yaml:11\n",
               "to say nothing higher up, where the town does, is looser");
    resolve_again(&trial, "tight town", "2022-01-01");
    CHECK_TEXT(value_text(&trial, "ground_snow"), "40 psf by town",
               "a town above a company is free");
    end(&trial);
}

static void test_waivers(void)
{
    struct trial trial = resolve("wrong", "waives-twice", "2022-01-01");
    CHECK(trial.is_good && trial.rulebook->waiver_count == 2, "expired waivers are kept");
    CHECK_TEXT(told(&trial), "wrong/waives/book.yaml:9:5 waiver-orphaned\n",
               "a waiver for no rule is told");
    CHECK(trial.problems.items[0].weight == PROBLEM_NOTE, "and stops nothing");
    CHECK(says(&trial, "waiver-orphaned", "did you mean roofcode/ridge?"), "with a near rule");
    const struct waiver *waiver = trial.rulebook->waivers[0];
    CHECK_TEXT(waiver->rule, "roofcode/ridge", "the rule");
    CHECK_TEXT(waiver->about, "roof_plane:south", "the thing");
    CHECK_TEXT(waiver->reason, "a parapet", "the reason");
    CHECK_TEXT(waiver->granted_by, "Official", "who granted it");
    CHECK_TEXT(waiver->permit, "1", "the permit");
    CHECK(date_compare(waiver->from, day("2020-01-01")) == 0 &&
              date_compare(waiver->until, day("2021-01-01")) == 0,
          "its days");
    end(&trial);
    trial = resolve("stack", "pell-harbor", "2019-06-01");
    CHECK_TEXT(told(&trial), "", "a waiver waits for its code to be adopted");
    end(&trial);
}

/* ---- the same bytes ----------------------------------------------------------------------- */

static const char *dump(struct trial *trial)
{
    const struct rulebook *rulebook = trial->rulebook;
    const char *all = told(trial);
    for (size_t i = 0; rulebook && i < rulebook->value_count; i++)
        all = arena_format(trial->arena, "%s%s %s\n", all, rulebook->values[i].name,
                           value_text(trial, rulebook->values[i].name));
    for (size_t i = 0; rulebook && i < rulebook->rule_count; i++)
        all = arena_format(trial->arena, "%s%s %s %s\n", all, rulebook->rules[i].id,
                           rule_text(trial, rulebook->rules[i].id),
                           rule_acts(trial, rulebook->rules[i].id));
    return all;
}

static void check_same(const char *folder, const char *names, const char *on)
{
    struct trial once = resolve(folder, names, on), twice = resolve(folder, names, on);
    const char *first = dump(&once);
    CHECK_TEXT(dump(&twice), first, "read anew, it is the same");
    resolve_again(&once, "nothing-of-the-kind", on);
    resolve_again(&once, names, on);
    CHECK_TEXT(dump(&once), first, "from the same shelf too, its mistakes told again");
    end(&once);
    end(&twice);
}

static void test_determinism(void)
{
    check_same("stack", STACK, "2024-06-01");
    check_same("wrong", "left-behind town loose", "2022-06-01");
    check_same("wrong", "town loose", "2022-06-01");
    check_same("wrong", "undecided", "2022-06-01");
    check_same("unread", "dates", "2022-06-01");
    struct trial one = resolve("stack", "pell-harbor tidewire", "2024-06-01");
    struct trial other = resolve("stack", "tidewire pell-harbor", "2024-06-01");
    for (size_t i = 0; i < one.rulebook->value_count; i++) {
        const char *name = one.rulebook->values[i].name;
        CHECK_TEXT(value_text(&other, name), value_text(&one, name),
                   "books that say nothing of each other may stand in either order");
    }
    CHECK(one.rulebook->rule_count == other.rulebook->rule_count, "with the same rules");
    end(&one);
    end(&other);
}

int main(void)
{
    test_dates();
    test_editions_of_values();
    test_kinds();
    test_bands();
    test_stack_of_four();
    test_adoptions_by_date();
    test_diamond();
    test_rule_texts();
    test_changes();
    test_acts();
    test_rule_order();
    test_no_stack();
    test_words();
    test_what_is_not_there();
    test_other_editions();
    test_loosening();
    test_tightening();
    test_waivers();
    test_determinism();
    return checks_end();
}
