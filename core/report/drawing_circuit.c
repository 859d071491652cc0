#include "drawing_circuit.h"

#include <string.h>

static size_t node_add(struct wiring *wiring, enum node_shape shape, const struct object *object)
{
    for (size_t i = 0; object != NULL && i < wiring->node_count; i++)
        if (wiring->nodes[i].object == object && wiring->nodes[i].shape == shape)
            return i;
    if (wiring->node_count == NODES_MOST) {
        wiring->is_too_large = true;
        return NODE_NONE;
    }
    wiring->nodes[wiring->node_count] = (struct node){.shape = shape, .object = object};
    return wiring->node_count++;
}

static void run_add(struct wiring *wiring, const struct object *circuit, size_t from, size_t to)
{
    if (from == NODE_NONE || to == NODE_NONE || from == to)
        return;
    for (size_t i = 0; i < wiring->run_count; i++)
        if (wiring->runs[i].from == from && wiring->runs[i].to == to)
            return;
    if (wiring->run_count == RUNS_MOST) {
        wiring->is_too_large = true;
        return;
    }
    wiring->runs[wiring->run_count++] = (struct run){circuit, from, to, ""};
}

static size_t node_of(struct wiring *wiring, const struct object *object,
                      const struct object *circuit, bool is_end)
{
    static const struct {
        enum kind_id kind;
        enum node_shape shape;
    } shapes[] = {{KIND_string, NODE_STRING},     {KIND_branch, NODE_BRANCH},
                  {KIND_source, NODE_SOURCE},     {KIND_combiner, NODE_COMBINER},
                  {KIND_inverter, NODE_INVERTER}, {KIND_disconnect, NODE_DISCONNECT},
                  {KIND_panel, NODE_PANEL},       {KIND_meter, NODE_METER}};
    if (object == NULL)
        return NODE_NONE;
    if (object->kind->id == KIND_busbar)
        return node_add(wiring, NODE_PANEL, object->parent);
    if (object->kind->id == KIND_circuit) {
        if (object_is(object, SLOT_circuit_role, "service"))
            return node_add(wiring, NODE_TAP, object);
        return node_add(wiring, NODE_JOINT, is_end ? circuit : object);
    }
    for (size_t i = 0; i < sizeof shapes / sizeof shapes[0]; i++)
        if (shapes[i].kind == object->kind->id)
            return node_add(wiring, shapes[i].shape, object);
    return NODE_NONE;
}

static bool begins_a_circuit(const struct design *design, const struct object *object)
{
    const struct objects *circuits = &design->of_kind[KIND_circuit];
    for (size_t i = 0; i < circuits->count; i++)
        if (object_in(circuits->items[i], SLOT_circuit_from) == object)
            return true;
    return false;
}

/* A run of several strings names one of them as its beginning and carries them all. */
static void add_carried(struct wiring *wiring, const struct design *design,
                        const struct object *circuit, size_t to)
{
    size_t count;
    struct object *const *carried = objects_in(&count, circuit, SLOT_circuit_carries);
    for (size_t i = 0; i < count; i++) {
        enum kind_id kind = carried[i]->kind->id;
        if ((kind == KIND_string || kind == KIND_branch) && !begins_a_circuit(design, carried[i]))
            run_add(wiring, circuit, node_of(wiring, carried[i], circuit, false), to);
    }
}

/* A feeder is often told from the panel above to the one that it feeds; the line goes from the
 * array down. */
static bool is_told_upward(const struct object *circuit)
{
    const struct object *to = object_in(circuit, SLOT_circuit_to);
    return object_is(circuit, SLOT_circuit_role, "feeder") && to != NULL &&
           to->kind->id == KIND_panel && object_in(to, SLOT_panel_feeder) == circuit;
}

static void add_circuits(struct wiring *wiring, const struct design *design)
{
    const struct objects *circuits = &design->of_kind[KIND_circuit];
    for (size_t i = 0; i < circuits->count; i++) {
        const struct object *circuit = circuits->items[i];
        if (has_removed_status(circuit, SLOT_circuit_status) ||
            object_is(circuit, SLOT_circuit_role, "service"))
            continue;
        bool is_upward = is_told_upward(circuit);
        unsigned foot = is_upward ? SLOT_circuit_from : SLOT_circuit_to;
        unsigned head = is_upward ? SLOT_circuit_to : SLOT_circuit_from;
        size_t to = node_of(wiring, object_in(circuit, foot), circuit, true);
        size_t from = node_of(wiring, object_in(circuit, head), circuit, false);
        run_add(wiring, circuit, from, to);
        add_carried(wiring, design, circuit, to);
    }
}

static bool has_way_out(const struct wiring *wiring, size_t node)
{
    for (size_t i = 0; i < wiring->run_count; i++)
        if (wiring->runs[i].from == node)
            return true;
    return false;
}

/* The panel with the breaker that serves a thing. */
static const struct object *panel_of_breaker(const struct object *object, unsigned slot)
{
    size_t count;
    struct object *const *breakers = objects_in(&count, object, slot);
    return count > 0 ? breakers[0]->parent->parent : NULL;
}

/* Where a thing leads when no circuit says so. */
static const struct object *next_of(const struct object *object)
{
    switch (object->kind->id) {
    case KIND_string: {
        const struct object *combiner = object_in(object, SLOT_string_combiner);
        return combiner != NULL ? combiner : object_in(object, SLOT_string_inverter);
    }
    case KIND_branch:
        return panel_of_breaker(object, SLOT_branch_breakers);
    case KIND_inverter:
        return panel_of_breaker(object, SLOT_inverter_breakers);
    case KIND_panel:
        return object_in(object, SLOT_panel_fed_from);
    default:
        return NULL;
    }
}

static void add_untold(struct wiring *wiring, const struct design *design)
{
    static const enum kind_id kinds[] = {KIND_string, KIND_branch, KIND_inverter, KIND_panel};
    for (size_t k = 0; k < sizeof kinds / sizeof kinds[0]; k++)
        for (size_t i = 0; i < design->of_kind[kinds[k]].count; i++) {
            const struct object *object = design->of_kind[kinds[k]].items[i];
            if ((kinds[k] == KIND_inverter && has_removed_status(object, SLOT_inverter_status)) ||
                (kinds[k] == KIND_panel && has_removed_status(object, SLOT_panel_status)))
                continue;
            size_t node = node_of(wiring, object, NULL, false);
            if (node != NODE_NONE && !has_way_out(wiring, node))
                run_add(wiring, NULL, node, node_of(wiring, next_of(object), NULL, false));
        }
}

/* Puts a node into a run, so that the run goes on behind it. */
static void insert(struct wiring *wiring, size_t node, size_t run)
{
    if (wiring->run_count == RUNS_MOST)
        return;
    struct run *rest = &wiring->runs[wiring->run_count++];
    *rest = wiring->runs[run];
    rest->from = node;
    wiring->runs[run].to = node;
    wiring->nodes[node].is_guessed = true;
}

static void add_disconnects(struct wiring *wiring, const struct design *design)
{
    const struct objects *all = &design->of_kind[KIND_disconnect];
    for (size_t i = 0; i < all->count; i++) {
        const struct object *one = all->items[i], *of = object_in(one, SLOT_disconnect_of);
        if (of == NULL || object_is(one, SLOT_disconnect_role, "service") ||
            object_is(one, SLOT_disconnect_role, "emergency") ||
            object_is(one, SLOT_disconnect_role, "rapid shutdown"))
            continue;
        size_t before = wiring->node_count, node = node_of(wiring, one, NULL, false);
        size_t thing = node_of(wiring, of, NULL, false);
        bool is_in = object_is(one, SLOT_disconnect_role, "DC") && of->kind->id == KIND_inverter;
        if (node != before || node == NODE_NONE)
            continue; /* a circuit says where it stands */
        /* Behind what is already there, so that they stand in the order in which they are told. */
        for (size_t j = 0; j < wiring->run_count; j++)
            if ((is_in ? wiring->runs[j].to : wiring->runs[j].from) == thing) {
                size_t run = j;
                for (size_t k = 0; !is_in && k < wiring->run_count; k++)
                    if (wiring->runs[k].from == wiring->runs[run].to &&
                        wiring->nodes[wiring->runs[run].to].is_guessed)
                        run = k;
                insert(wiring, node, run);
                break;
            }
    }
}

const struct object *service_panel(const struct design *design)
{
    const struct objects *panels = &design->of_kind[KIND_panel];
    for (size_t i = 0; i < panels->count; i++) {
        struct amount is = object_amount(panels->items[i], SLOT_panel_is_service_panel);
        if (is.type == AMOUNT_YESNO && is.yes)
            return panels->items[i];
    }
    return panels->count == 1 ? panels->items[0] : NULL;
}

static const struct object *service_circuit(const struct design *design)
{
    const struct objects *circuits = &design->of_kind[KIND_circuit];
    for (size_t i = 0; i < circuits->count; i++)
        if (object_is(circuits->items[i], SLOT_circuit_role, "service"))
            return circuits->items[i];
    return NULL;
}

static const struct object *revenue_meter(const struct design *design)
{
    const struct objects *meters = &design->of_kind[KIND_meter];
    for (size_t i = 0; i < meters->count; i++) {
        struct amount is = object_amount(meters->items[i], SLOT_meter_revenue);
        if (is.type == AMOUNT_YESNO && is.yes)
            return meters->items[i];
    }
    return meters->count == 1 ? meters->items[0] : NULL;
}

/* From the service panel, or from the tap before it, to the utility. */
static void add_service(struct wiring *wiring, const struct design *design)
{
    const struct objects *disconnects = &design->of_kind[KIND_disconnect];
    const struct object *panel = service_panel(design), *circuit = service_circuit(design);
    size_t tap = NODE_NONE, at = node_of(wiring, panel, NULL, false);
    for (size_t i = 0; i < wiring->node_count; i++)
        if (wiring->nodes[i].shape == NODE_TAP)
            tap = i;
    size_t meter = node_add(wiring, NODE_METER, revenue_meter(design));
    wiring->utility = node_add(wiring, NODE_UTILITY, NULL);
    for (size_t i = 0; i < disconnects->count; i++) {
        if (!object_is(disconnects->items[i], SLOT_disconnect_role, "service") || at == NODE_NONE)
            continue;
        size_t node = node_of(wiring, disconnects->items[i], NULL, false);
        run_add(wiring, NULL, at, node);
        at = node;
    }
    run_add(wiring, circuit, at, tap != NODE_NONE ? tap : meter);
    if (tap != NODE_NONE)
        run_add(wiring, circuit, tap, meter);
    run_add(wiring, NULL, meter, wiring->utility);
}

static void find_reached(struct wiring *wiring)
{
    bool is_changed = true;
    wiring->nodes[wiring->utility].is_reached = true;
    while (is_changed) {
        is_changed = false;
        for (size_t i = 0; i < wiring->run_count; i++) {
            const struct run *run = &wiring->runs[i];
            if (!wiring->nodes[run->to].is_reached || wiring->nodes[run->from].is_reached)
                continue;
            wiring->nodes[run->from].is_reached = true;
            is_changed = true;
        }
    }
}

/* Levels by the longest way down; a circle stops after as many rounds as there are nodes. */
static void set_levels(struct wiring *wiring)
{
    bool is_changed = true;
    for (size_t round = 0; is_changed && round < wiring->node_count; round++) {
        is_changed = false;
        for (size_t i = 0; i < wiring->run_count; i++) {
            const struct node *from = &wiring->nodes[wiring->runs[i].from];
            struct node *to = &wiring->nodes[wiring->runs[i].to];
            if (from->is_reached && to->level < from->level + 1) {
                to->level = from->level + 1;
                is_changed = true;
            }
        }
    }
    wiring->is_circle = is_changed && !wiring->is_too_large;
    wiring->is_too_large |= is_changed;
    /* What begins a column stands just above what it leads to. */
    for (size_t round = 0; round < wiring->node_count; round++)
        for (size_t i = 0; i < wiring->node_count; i++) {
            struct node *node = &wiring->nodes[i];
            unsigned least = 0;
            bool is_alone = node->shape == NODE_PANEL || node->shape == NODE_DISCONNECT ||
                            node->shape == NODE_INVERTER;
            for (size_t j = 0; j < wiring->run_count && is_alone; j++) {
                const struct run *run = &wiring->runs[j];
                unsigned above = wiring->nodes[run->to].level;
                if (run->from == i && above > 0 && (least == 0 || above < least))
                    least = above;
            }
            if (least > node->level + 1)
                node->level = least - 1;
        }
    wiring->levels = wiring->nodes[wiring->utility].level + 1;
}

/* Leaves get columns from the left, in the order in which one meets them going up; what joins
 * stands over the middle of what it joins. */
static double set_column(struct wiring *wiring, size_t node, size_t depth)
{
    double sum = 0;
    size_t count = 0;
    for (size_t i = 0; i < wiring->run_count && depth < NODES_MOST; i++) {
        if (wiring->runs[i].to != node)
            continue;
        sum += set_column(wiring, wiring->runs[i].from, depth + 1);
        count++;
    }
    wiring->nodes[node].x = count > 0 ? sum / (double)count : (double)wiring->columns++;
    return wiring->nodes[node].x;
}

static void set_tags(struct wiring *wiring)
{
    unsigned count = 0;
    for (size_t i = 0; i < wiring->run_count; i++) {
        struct run *run = &wiring->runs[i];
        bool is_told = false;
        for (size_t j = 0; j < i && run->circuit != NULL; j++)
            is_told |= wiring->runs[j].circuit == run->circuit;
        if (run->circuit == NULL || is_told)
            continue;
        if (count < 26)
            run->tag[0] = (char)('A' + count);
        else {
            run->tag[0] = (char)('A' + count / 26 - 1);
            run->tag[1] = (char)('A' + count % 26);
        }
        count++;
    }
}

void wiring_collect(struct wiring *wiring, const struct design *design)
{
    *wiring = (struct wiring){0};
    add_circuits(wiring, design);
    add_untold(wiring, design);
    add_disconnects(wiring, design);
    add_service(wiring, design);
    if (wiring->utility == NODE_NONE)
        return;
    find_reached(wiring);
    set_levels(wiring);
    if (!wiring->is_too_large)
        set_column(wiring, wiring->utility, 0);
    set_tags(wiring);
}
