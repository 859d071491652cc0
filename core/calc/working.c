#include "working.h"

#include <stdarg.h>
#include <string.h>

#include "kept.h"
#include "layout.h"

void working_start(struct working *working)
{
    working->step_count = 0;
    working->read_count = 0;
    working->stop = (struct stop){STOP_NONE, NULL, 0, NULL, NULL};
    working->since = working->begun = ++working->turn;
    working->trail_count = working->trail_start = 0;
    if (working->is_lasting)
        return;
    /* The arrays may be gone with a cleared arena: begin anew. */
    working->steps = NULL;
    working->step_capacity = 0;
    working->reads = NULL;
    working->read_capacity = 0;
    working->trail = NULL;
    working->trail_capacity = 0;
    working->seen = NULL;
    working->seen_count = 0;
}

void working_close(struct working *working)
{
    layout_free(working->layout);
    working->layout = NULL;
    kept_free(working->kept);
    working->kept = NULL;
    working->sources_told = NULL;
}

void working_step(struct working *working, const char *source, const char *format, ...)
{
    if (!working->keeps_steps)
        return;
    va_list arguments;
    va_start(arguments, format);
    char *text = arena_format_list(working->arena, format, arguments);
    va_end(arguments);
    if (text != NULL) /* else the arena stays marked as short, and its owner asks */
        working_tell(working, (struct step){text, source});
}

void working_tell(struct working *working, struct step step)
{
    struct step *steps = arena_grow(working->arena, working->steps, working->step_count,
                                    &working->step_capacity, sizeof *steps);
    if (steps == NULL)
        return;
    working->steps = steps;
    steps[working->step_count++] = step;
}

/* Room for this fact and all before it. False: no memory. */
static bool widen_seen(struct working *working, size_t fact)
{
    size_t count = working->design != NULL ? working->design->fact_count : 0;
    if (count <= fact)
        count = 2 * (fact + 1);
    uint32_t *seen = arena_take(working->arena, count * sizeof *seen);
    if (seen == NULL)
        return false;
    if (working->seen_count > 0)
        memcpy(seen, working->seen, working->seen_count * sizeof *seen);
    working->seen = seen;
    working->seen_count = count;
    return true;
}

struct trail working_trail_open(struct working *working)
{
    struct trail outer = {working->trail_start, working->since};
    working->trail_start = working->trail_count;
    working->since = ++working->turn;
    return outer;
}

struct readings *working_trail_keep(const struct working *working, struct arena *arena)
{
    size_t count = working->trail_count - working->trail_start;
    struct readings *kept = arena_take(arena, sizeof *kept + (count + 1) * sizeof *kept->items);
    if (kept == NULL)
        return NULL;
    kept->items = (struct reading *)(kept + 1);
    kept->count = count;
    kept->noted = working->turn + 1; /* this piece has just noted it */
    if (count > 0)
        memcpy(kept->items, working->trail + working->trail_start, count * sizeof *kept->items);
    return kept;
}

/* False: no memory, and the arena stays marked as short. */
static bool leave_trail(struct working *working, struct reading reading)
{
    if (working->since == working->begun)
        return true; /* no piece of work asks for it */
    if (working->trail_count == working->trail_capacity) {
        struct reading *trail = arena_grow(working->arena, working->trail, working->trail_count,
                                           &working->trail_capacity, sizeof *trail);
        if (trail == NULL)
            return false;
        working->trail = trail;
    }
    working->trail[working->trail_count++] = reading;
    return true;
}

void working_trail_close(struct working *working, struct trail outer, struct readings *kept)
{
    size_t start = working->trail_start;
    working->trail_start = outer.start;
    working->since = outer.since;
    if (kept != NULL && kept->count > 0) {
        working->trail_count = start; /* one line stands for all of them */
        leave_trail(working, (struct reading){.others = kept});
    }
    if (working->since == working->begun)
        working->trail_count = 0;
}

/* Once a finding. False: no memory, and the arena stays marked as short. */
static bool add_read(struct working *working, struct fact_read read, uint32_t last)
{
    if (last > working->begun)
        return true;
    if (working->read_count == working->read_capacity) {
        struct fact_read *reads = arena_grow(working->arena, working->reads, working->read_count,
                                             &working->read_capacity, sizeof *reads);
        if (reads == NULL)
            return false;
        working->reads = reads;
    }
    working->reads[working->read_count++] = read;
    return true;
}

/* When the fact was last read, to be set anew; NULL: no memory. */
static uint32_t *find_seen(struct working *working, const struct object *object, unsigned slot)
{
    size_t fact = object->first_fact + slot;
    return fact < working->seen_count || widen_seen(working, fact) ? &working->seen[fact] : NULL;
}

/* Down to the single facts, those that the finding does not yet rest on. */
static void add_all(struct working *working, struct readings *readings)
{
    for (size_t i = 0; i < readings->count; i++) {
        struct reading *one = &readings->items[i];
        if (one->object == NULL) {
            if (one->others->noted <= working->begun)
                add_all(working, one->others);
            continue;
        }
        uint32_t *seen = find_seen(working, one->object, one->slot);
        if (seen == NULL || !add_read(working, (struct fact_read){one->object, one->slot}, *seen))
            return;
        *seen = working->turn + 1;
    }
    readings->noted = working->turn + 1;
}

void working_read_again(struct working *working, struct readings *readings)
{
    if (working_stands(working, readings->noted) ||
        !leave_trail(working, (struct reading){.others = readings}))
        return;
    if (readings->noted <= working->begun)
        add_all(working, readings);
    readings->noted = working->turn + 1;
}

void working_read(struct working *working, const struct object *object, unsigned slot)
{
    uint32_t *seen = find_seen(working, object, slot);
    if (seen == NULL || working_stands(working, *seen) ||
        !leave_trail(working, (struct reading){object, {slot}}) ||
        !add_read(working, (struct fact_read){object, slot}, *seen))
        return;
    *seen = working->turn + 1;
}

bool(working_missing)(struct working *working, const struct object *object, unsigned slot)
{
    const struct fact *fact = object_fact(object, slot);
    /* A list that looks backwards is missing because a fact elsewhere is: that one is to be given.
     * One that is told, but holds only what is removed, has no such fact. */
    if (object_row(object, slot)->type == TYPE_INVERSE && fact->state == FACT_MISSING &&
        fact->is.unsure.object != NULL)
        return working_missing(working, fact->is.unsure.object, fact->is.unsure.slot);
    working->stop = (struct stop){STOP_MISSING, object, slot, NULL, NULL};
    return false;
}

static bool stop_with(struct working *working, enum stop_kind kind, const char *input,
                      const char *format, va_list arguments)
{
    const char *why = arena_format_list(working->arena, format, arguments);
    working->stop = (struct stop){why != NULL ? kind : STOP_MEMORY, NULL, 0, input, why};
    return false;
}

bool(working_beyond)(struct working *working, const char *format, ...)
{
    va_list arguments;
    va_start(arguments, format);
    stop_with(working, STOP_BEYOND, NULL, format, arguments);
    va_end(arguments);
    return false;
}

bool(working_wrong)(struct working *working, const char *input, const char *format, ...)
{
    va_list arguments;
    va_start(arguments, format);
    stop_with(working, STOP_WRONG, input, format, arguments);
    va_end(arguments);
    return false;
}

bool(working_short)(struct working *working)
{
    working->stop = (struct stop){STOP_MEMORY, NULL, 0, NULL, NULL};
    return false;
}

/* Is the fact there to be read? Notes the reading, too. */
static bool need(const struct object *object, unsigned slot, struct working *working)
{
    working_read(working, object, slot);
    return object_has(object, slot) || working_missing(working, object, slot);
}

bool need_quantity(struct quantity *out, const struct object *object, unsigned slot,
                   struct working *working)
{
    if (!need(object, slot, working))
        return false;
    *out = object_quantity(object, slot);
    return true;
}

bool need_number(double *out, const struct object *object, unsigned slot, struct working *working)
{
    if (!need(object, slot, working))
        return false;
    *out = object_fact(object, slot)->is.number;
    return true;
}

bool need_word(const char **out, const struct object *object, unsigned slot,
               struct working *working)
{
    if (!need(object, slot, working))
        return false;
    *out = object_fact(object, slot)->is.word;
    return true;
}

bool need_yesno(bool *out, const struct object *object, unsigned slot, struct working *working)
{
    if (!need(object, slot, working))
        return false;
    *out = object_fact(object, slot)->is.yes;
    return true;
}

bool need_object(const struct object **out, const struct object *object, unsigned slot,
                 struct working *working)
{
    const struct fact *fact = object_fact(object, slot);
    working_read(working, object, slot);
    *out = NULL;
    if (fact->state == FACT_NONE)
        return true;
    if (!object_has(object, slot))
        return working_missing(working, object, slot);
    *out = fact->is.object;
    return true;
}

bool need_objects(struct object *const **out, size_t *count, const struct object *object,
                  unsigned slot, struct working *working)
{
    const struct fact *fact = object_fact(object, slot);
    working_read(working, object, slot);
    *out = NULL;
    *count = 0;
    if (fact->state == FACT_NONE)
        return true;
    if (!object_has(object, slot))
        return working_missing(working, object, slot);
    *out = fact->is.objects;
    *count = fact->count;
    return true;
}
