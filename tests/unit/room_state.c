/* Rules made at random that keep what they can in the locals of their file: from one thing to the
 * next they may, from one review to the next nothing stays. */
#include "room_trial.h"

#include <inttypes.h>

static unsigned next(uint64_t *state, unsigned below)
{
    *state ^= *state << 13;
    *state ^= *state >> 7;
    *state ^= *state << 17;
    return (unsigned)((*state >> 20) % below);
}

enum { LOCALS = 4 };

static const char head[] =
    "local zero = 0.0\nlocal v0, v1, v2, v3\n"
    "local function tell(v)\nlocal kind = type(v)\n"
    "if same(kind, 'string') or same(kind, 'boolean') then return tostring(v) end\n"
    "if not same(kind, 'number') then return kind end\n"
    "if not (v < 1/0 and v > -1/0) then return 'not finite' end\n"
    "return format('%s %s %s', v, 1 / v > 0, 9007199254740993 * v > 9007199254740992)\nend\n";

static const char card[] =
    "return {title = 'T', cite = 'C', about = 'roof_plane', check = function(thing)\n"
    "review(format('%s, %s, %s, %s', tell(v0), tell(v1), tell(v2), tell(v3)))\n";

/* Values of all kinds, those above all that are equal and yet can be told apart. */
static const char *value(uint64_t *state)
{
    static const char *const values[] = {"0",
                                         "0.0",
                                         "-zero",
                                         "1",
                                         "1.0",
                                         "'a'",
                                         "nil",
                                         "true",
                                         "false",
                                         "tostring",
                                         "shall.be",
                                         "0 / zero",
                                         "{}",
                                         "3 * A",
                                         "function() return 1 end",
                                         "('x'):upper()",
                                         "v0",
                                         "v1",
                                         "v2",
                                         "v3"};
    return values[next(state, sizeof values / sizeof values[0])];
}

static void make(struct text *rule, struct arena *arena, uint64_t *state)
{
    rule->length = 0;
    text_add_word(rule, head);
    for (int i = 0; i < LOCALS; i++)
        text_add_word(rule, arena_format(arena, "v%d = %s\n", i, value(state)));
    for (int i = 0; i < 2; i++)
        text_add_word(rule, arena_format(arena,
                                         "local function f%d(x) v%u = %s if x then v%u = %s end "
                                         "end\n",
                                         i, next(state, LOCALS), value(state), next(state, LOCALS),
                                         value(state)));
    text_add_word(rule, card);
    for (unsigned left = next(state, 4); left > 0; left--)
        text_add_word(rule, next(state, 2) == 0
                                ? arena_format(arena, "f%u(%s)\n", next(state, 2),
                                               next(state, 2) == 0 ? "true" : "false")
                                : arena_format(arena, "v%u = %s\n", next(state, LOCALS),
                                               next(state, 5) == 0 ? "thing" : value(state)));
    text_add_word(rule, "end}\n");
}

/* What was found of both roof planes, in the arena. */
static const char *tell(const struct room_trial *trial, struct arena *arena)
{
    const char *all = "";
    for (size_t i = 0; i < trial->findings.count; i++)
        all = arena_format(arena, "%s%s\n", all, trial->findings.items[i]->message);
    return all;
}

int main(void)
{
    enum { RULES = 2000 };
    uint64_t state = 20260803;
    size_t changing = 0, unlike = 0;
    struct text rule = {0};
    for (size_t i = 0; i < RULES; i++) {
        struct room_trial trial = room_open(NULL);
        make(&rule, trial.arena, &state);
        const char *path = write_rule(rule.bytes, rule.length), *first = NULL;
        for (int turn = 0; turn < 3; turn++) {
            room_review(&trial, path);
            const struct finding *south = finding_of(&trial, "room/attack", 0),
                                 *north = finding_of(&trial, "room/attack", 1);
            first = turn == 0 ? tell(&trial, trial.arena) : first;
            CHECK(trial.is_done && trial.problems.count == 0, rule.bytes);
            unlike += strcmp(tell(&trial, trial.arena), first) != 0;
            changing +=
                south != NULL && north != NULL && strcmp(south->message, north->message) != 0;
        }
        if (unlike > 0) {
            CHECK_TEXT(tell(&trial, trial.arena), first, rule.bytes);
            i = RULES;
        }
        remove(path);
        room_close(&trial);
    }
    text_free(&rule);
    CHECK(unlike == 0, "each review begins anew");
    CHECK(changing > RULES / 10, "many rules remember from one thing to the next");
    return checks_end();
}
