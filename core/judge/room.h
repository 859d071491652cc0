/* What the files of the closed room share. */
#ifndef JUDGE_ROOM_H
#define JUDGE_ROOM_H
#include <lauxlib.h>
#include <lua.h>

#include "judge.h"
#include "room_things.h"
#include "stir.h"
#include "text.h"

/* Where tests go: a finding's own list, or an option's. */
struct frame {
    struct test **tests;
    size_t *count, *capacity;
    struct frame *above;
};

/* Why a rule stopped before its end, other than by a mistake: raised as a light userdata that only
 * the core can make. */
enum signal_kind { SIGNAL_NONE, SIGNAL_MISSING, SIGNAL_REVIEW };

/* Which of a limit's kinds stopped the rule. */
enum runaway { RUNAWAY_NONE, RUNAWAY_BUDGET, RUNAWAY_MEMORY, RUNAWAY_SIZE };

/* What of a rule runs. */
enum stage { STAGE_CARD, STAGE_APPLIES, STAGE_CHECK };

/* What was found behind a name, found again by where Lua holds the name's text. */
struct found_slot {
    const char *name; /* of a fact, held by its kind's table, so that it stays where it is */
    const struct kind *kind;
    unsigned slot;
};

struct found_word {
    const char *const *words;
    const char *text; /* Lua's, which is held in the registry */
    const char *word; /* the same among the words */
};

enum { FOUND = 512 };

/* Views of one kind, from one place in the registry to the next. */
struct shown_chain {
    uint32_t first, next; /* next: not yet used in this review; 0: none */
};

enum {
    MOST_SHOWN = 8192, /* 128 KiB of the registry; of facts, what is over is made anew each time */
    SHOWN_OBJECTS = THING_BOOK + 1, /* chains: of each tag, and of each kind of things */
    SHOWN_CHAINS = SHOWN_OBJECTS + KIND_COUNT
};

struct judge {
    lua_State *lua;
    struct room_pool *pool; /* Lua's memory */
    struct judge_limits limits;
    int usual_period, period; /* of the hook: instructions between two looks */
    size_t memory;            /* bytes that Lua holds */
    bool is_limited;          /* a rule runs, so the limits hold */
    bool is_short;            /* the system had no memory for Lua */
    bool is_full;             /* over the cap: collect, then see */
    enum runaway runaway;     /* of the call that runs */
    long budget;              /* of each call, for this design */
    long instructions;        /* spent by the call that runs */
    long rule_budget;         /* of all calls of one rule, for this design */
    long rule_work;           /* spent by the rule so far */
    size_t results;           /* recorded in the finding */
    size_t rule_results;      /* recorded in all findings of the rule */
    struct arena *arena;      /* the judge's own, for compiled files */
    struct index files;       /* path → struct rule_text */
    /* Numbers in Lua's registry; 0: not yet made. */
    int metatables[THING_BOOK + 1], kind_metatables[KIND_COUNT], book;
    /* The review that runs: */
    const struct design *design;
    const struct rulebook *rulebook;
    struct working *working;
    struct findings *findings;
    struct problems *problems;
    struct arena *page;        /* the findings' arena */
    const struct input **told; /* by number of the fact; NULL: no finding rests on it so far */
    uint32_t *shown;           /* where its view stands in the registry, by key; 0: it has none */
    size_t shown_count, shown_first, shown_room;
    int shown_over; /* of the table with views of things for which there was no place */
    bool has_shown_over;
    struct shown_chain shown_chains[SHOWN_CHAINS];
    uint32_t shown_follows[MOST_SHOWN]; /* the next of its chain, for each place */
    struct found_slot found_slots[FOUND];
    struct found_word found_words[FOUND];
    size_t found_first; /* the first of their places in the registry */
    const struct rule *rule;
    const char *gave_up; /* the rule ran away, so that it is not run again; or NULL */
    struct stir *stir;   /* or NULL */
    /* The finding that is made: */
    enum stage stage;
    struct finding *finding;
    struct frame *frame;
    struct test *drafts; /* room for the tests of one finding after the other */
    size_t draft_capacity;
    bool is_broken;
    enum signal_kind signal;
    struct missing missing; /* of SIGNAL_MISSING */
    const char *why;        /* of SIGNAL_REVIEW */
};

/* Keys of the registry. The signal has no tag: it would be none of our things if it were taken for
 * one. */
extern const char room_words;
extern const enum thing_tag room_signal;

static inline struct judge *room_judge(lua_State *lua)
{
    return *(struct judge **)lua_getextraspace(lua);
}

/* Fill a new state; called protected. */
void room_add_words(lua_State *lua);       /* room_words.c: plain functions */
void room_add_quantities(lua_State *lua);  /* room_quantity.c: units and arithmetic */
void room_add_views(lua_State *lua);       /* room_view_made.c: what is shown of a design */
void room_add_tests(lua_State *lua);       /* room_tests.c: shall, should, review */
void room_add_calculators(lua_State *lua); /* room_calculator.c */
void room_add_found(lua_State *lua);       /* room_shown.c: places for words that were found */
/* room_list.c: raises unless what a rule can reach is what was agreed. */
void room_check_words(lua_State *lua);

/* room.c */
/* Puts the value at the top of the stack among the words of every rule, under a name. */
void room_set_word(lua_State *lua, const char *name);
/* From here on the table at the top raises for names that it does not have. */
void room_refuse_others(lua_State *lua);
/* Replaces the table at the top by an empty one that shows it and refuses to be written. */
void room_freeze(lua_State *lua);
/* Puts '?' for bytes that are no UTF-8 and for control characters. */
void room_clean(char *text);
/* A copy in the page of a text at this index; raises where it is empty, longer than `most` bytes,
 * or not plain text. */
const char *room_keep_text(lua_State *lua, int index, const char *what, size_t most);
/* Notes a missing fact and leaves the rule; does not return. */
int room_raise_missing(lua_State *lua, const struct missing *missing);
int room_raise_missing_fact(lua_State *lua, const struct object *object, unsigned slot);
/* Notes why a person must judge and leaves the rule; does not return. */
int room_raise_review(lua_State *lua, const char *why);
/* After a calculation stopped: leaves the rule in the way that fits; does not return. */
int room_raise_stop(lua_State *lua);
/* Is the error at this index of the stack one of our signals? */
bool room_is_signal(lua_State *lua, int index);

/* room_limits.c */
/* Counts work that the hook does not see (a loop in C) towards the budget. */
void room_charge(lua_State *lua, size_t work);
/* What is made once for all rules is none's work, or the first to come by would have less left than
 * the others. Did the limits hold? To be put back; where memory lacks, the call ends them. */
bool room_lift_limits(lua_State *lua);

/* room_quantity.c */
void room_push_quantity(lua_State *lua, struct quantity quantity);
struct quantity *room_to_quantity(lua_State *lua, int index); /* NULL: it is none */
/* The tag of a userdata of ours, or 0. */
int room_tag(lua_State *lua, int index);
/* room_shown.c */
/* A review begins: what the last one showed is nothing to it. False: no memory, and no rule may
 * run. */
bool room_forget_shown(lua_State *lua);
/* A fact's key is its number among all; this is that of a thing. */
size_t room_key_of_object(lua_State *lua, const struct object *object);
/* Pushes what was shown before. False: nothing was. */
bool room_show_again(lua_State *lua, size_t key);
/* Pushes a view of an earlier review, to be written anew for this key. NULL: the chain has none. */
void *room_show_anew(lua_State *lua, size_t key, size_t chain);
/* Pushes the view of a thing for which there was no place. False: it has none. */
bool room_show_over(lua_State *lua, const struct object *object);
/* Keeps the view of a thing at the top where there is no place. A thing may be the key of a rule's
 * table, and so must have one view alone. */
void room_keep_over(lua_State *lua, const struct object *object);
/* Keeps the view at the top, as long as there is room for it. False: there is none. */
bool room_keep_shown(lua_State *lua, size_t key, size_t chain);
/* room_view.c */
void room_push_object(lua_State *lua, const struct object *object);
/* room_view_list.c */
/* Lua's own ipairs at the top becomes ours. */
void room_push_walk(lua_State *lua);
/* room_view_word.c */
void room_push_word(lua_State *lua, const char *word, const char *const *words, const char *of);
/* room_view_made.c */
/* An empty thing of ours with its metatable, at the top. */
void *room_new_thing(lua_State *lua, size_t size, enum thing_tag tag);
void room_push_amount(lua_State *lua, const struct amount *amount);
/* room_book.c */
void room_push_book(lua_State *lua);
/* room_amount.c */
/* Raises where the text at this index has a NUL in it: what stands before it is another text. */
void room_refuse_nul(lua_State *lua, int index);
/* Any amount, or false: tables, functions, things of the design. A text stays Lua's. */
bool room_to_amount(struct amount *out, lua_State *lua, int index);
/* The same, to be kept: a text is copied into the page. */
bool room_keep_amount(struct amount *out, lua_State *lua, int index);
/* What people call the type of a value: "quantity (voltage)", "number", "word". */
const char *room_type_name(lua_State *lua, int index, char *buffer, size_t size);
/* Writes a value as people read it; never an address. */
void room_write_value(char *buffer, size_t size, lua_State *lua, int index);
/* room_number.c */
extern const luaL_Reg room_number_words[], room_numbers[];
/* The number; raises where it is not finite. */
double room_finite(lua_State *lua, double number);
/* a < b, as the operator has it; raises with the line of the rule. */
bool room_is_less(lua_State *lua, int a, int b);
/* room_text.c, room_table.c */
extern const luaL_Reg room_texts[], room_tables[];
/* room_calculator.c */
int room_call_method(lua_State *lua); /* upvalue 1: the calculator */
/* A struct missing for a fact, with its example; texts in the page. */
struct missing room_missing_fact(struct judge *judge, const struct object *object, unsigned slot);

/* stir.c */
/* Notes the comparison, and moves its limit where that is asked for. */
void room_stir(lua_State *lua, struct test *test);

/* card.c */
/* What one protected call into a rule needs and gives back. */
struct running {
    struct judge *judge;
    struct rule_text *text;
    struct card *card;
    const struct object *about; /* NULL: only the card is read */
    bool applies;
    unsigned applies_line, check_line; /* where they begin; 0: not there, or one of ours */
};
/* Runs the file's chunk, which returns the card. Called protected with a struct running; leaves the
 * card's table. */
int room_run_card(lua_State *lua);
/* The same for a kept card whose functions nothing can have changed: nothing runs, and nothing is
 * raised. False: it has to be run. */
bool room_take_card(lua_State *lua, struct running *running);

/* card_table.c */
/* Keeps the card's table for the next review, if nothing can be kept in it; `page` is that of its
 * functions. Raises where there is no memory. */
void room_keep_card_table(lua_State *lua, struct rule_text *text, int card, int page);
/* Pushes the kept table, if it is still what the chunk would make anew. */
bool room_push_card_table(lua_State *lua, struct rule_text *text);

/* keep.c */
/* Copies the working into the finding before the next one begins. False: no memory. */
bool room_keep_working(struct judge *judge);
/* "busbar main: rating", "service: rating", or of the design itself "title". NULL: no memory. */
const char *room_name_of_read(struct judge *judge, const struct fact_read *read);

/* rule_file.c */
/* A card as it was once found to be right, in the judge's arena: nothing but the text and the
 * edition decides it. */
struct kept_card {
    struct kept_card *next;
    const char *edition; /* that it cites for, or NULL */
    struct card card;
    unsigned applies_line, check_line;
};

struct rule_text {
    struct book_text file; /* as it was read; no bytes where it could not be */
    int chunk;             /* registry reference, or LUA_NOREF: it could not be compiled */
    int card_table;        /* of a kept one; LUA_NOREF: none so far, LUA_REFNIL: never */
    bool is_fixed;         /* no function of the kept one can change what they see */
    bool is_straight[2];   /* its applies and its check end within one look of the hook */
    const char *code;      /* of what is wrong */
    const char *wrong;     /* what is wrong with the file, or NULL */
    unsigned line, column;
    const char *excerpt;
    struct kept_card *cards; /* those found to be right so far, one for each edition */
};
/* The compiled file of a rule; compiles it at the first asking. NULL: no memory. */
struct rule_text *rule_text_find(struct judge *judge, const char *path);
/* "rule:12: unexpected symbol" → line (0: none) and sentence. */
const char *rule_text_split(const char *message, unsigned *line);
/* The first `==` or `~=` outside strings and comments. False: none. */
bool rule_text_find_equals(const char *text, size_t length, size_t *at);

#endif
