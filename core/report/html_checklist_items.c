/* Items of three visits, in our own words. Sources: the lists that cities publish for one- and
 * two-family rooftop systems (secondary sources) for what is looked at before work is covered and
 * at the end; the utility's visit and what is said of doors and ladders: common practice, no
 * source. */
#include <stdio.h>
#include <string.h>

#include "html_checklist.h"

static const struct object *first_of(struct html *html, enum kind_id kind)
{
    const struct design *design = html->report->design;
    return design != NULL && design->of_kind[kind].count > 0 ? design->of_kind[kind].items[0]
                                                             : NULL;
}

static size_t count_of(struct html *html, enum kind_id kind)
{
    return html->report->design != NULL ? html->report->design->of_kind[kind].count : 0;
}

/* "19 modules (first: Quillon Q440), on plane south". */
static const char *modules_text(struct html *html)
{
    const struct object *first = first_of(html, KIND_module);
    if (first == NULL)
        return NULL;
    const struct objects *all = &html->report->design->of_kind[KIND_module];
    const char *planes = "", *last = "";
    for (size_t i = 0; i < all->count; i++) {
        const char *plane = html_fact_or_dash(html, all->items[i], SLOT_module_plane);
        if (strcmp(plane, last) != 0 && strstr(planes, plane) == NULL)
            planes = html_text(html, arena_format(html->arena, "%s%s%s", planes,
                                                  planes[0] != '\0' ? ", " : "", plane));
        last = plane;
    }
    return html_text(html, arena_format(html->arena, "%zu modules, %s, on %s", all->count,
                                        html_fact_or_dash(html, first, SLOT_module_model), planes));
}

static const char *attachments_text(struct html *html)
{
    const struct object *first = first_of(html, KIND_attachment);
    const struct object *racking = first_of(html, KIND_racking);
    if (first == NULL || racking == NULL)
        return NULL;
    return html_text(
        html,
        arena_format(html->arena, "%zu × %s into %s, %s apart", count_of(html, KIND_attachment),
                     html_fact_or_dash(html, first, SLOT_attachment_model),
                     html_fact_or_dash(html, first, SLOT_attachment_stands_on),
                     html_fact_or_dash(html, racking, SLOT_racking_attachment_spacing)));
}

static const char *grounding_text(struct html *html)
{
    const struct object *grounding = first_of(html, KIND_grounding);
    if (grounding == NULL)
        return NULL;
    return html_text(
        html, arena_format(html->arena, "Bonding by %s; array grounding conductor %s %s",
                           html_fact_or_dash(html, grounding, SLOT_grounding_bonding),
                           html_fact_or_dash(html, grounding, SLOT_grounding_array_egc_size),
                           html_fact_or_dash(html, grounding, SLOT_grounding_array_egc_material)));
}

static const char *inverters_text(struct html *html)
{
    const struct object *first = first_of(html, KIND_inverter);
    if (first == NULL)
        return NULL;
    const struct fact *model = object_fact(first, SLOT_inverter_model);
    const char *current =
        model->state == FACT_GIVEN
            ? html_fact_or_dash(html, model->is.object, SLOT_inverter_model_output_current)
            : "–";
    return html_text(
        html, arena_format(html->arena, "%zu × %s, output %s, %s", count_of(html, KIND_inverter),
                           html_fact_or_dash(html, first, SLOT_inverter_model), current,
                           html_fact_or_dash(html, first, SLOT_inverter_location)));
}

static const char *shutdown_text(struct html *html)
{
    const struct object *shutdown = first_of(html, KIND_rapid_shutdown);
    if (shutdown == NULL)
        return NULL;
    return html_text(
        html,
        arena_format(html->arena, "By %s; set off by %s, %s",
                     html_fact_or_dash(html, shutdown, SLOT_rapid_shutdown_method),
                     html_fact_or_dash(html, shutdown, SLOT_rapid_shutdown_initiator),
                     html_fact_or_dash(html, shutdown, SLOT_rapid_shutdown_initiator_location)));
}

static const char *connection_text(struct html *html)
{
    const struct object *connection = first_of(html, KIND_interconnection);
    if (connection == NULL)
        return NULL;
    return html_text(
        html, arena_format(html->arena, "On the %s at %s, device %s",
                           html_fact_or_dash(html, connection, SLOT_interconnection_side),
                           html_fact_or_dash(html, connection, SLOT_interconnection_at),
                           html_fact_or_dash(html, connection, SLOT_interconnection_ocpd_rating)));
}

static const char *labels_text(struct html *html)
{
    size_t count = count_of(html, KIND_label);
    return count == 0 ? NULL
                      : html_text(html, arena_format(html->arena,
                                                     "%zu labels in the schedule above", count));
}

static const char *utility_disconnect_text(struct html *html)
{
    const struct design *design = html->report->design;
    for (size_t i = 0; design != NULL && i < design->of_kind[KIND_disconnect].count; i++) {
        const struct object *one = design->of_kind[KIND_disconnect].items[i];
        if (object_is(one, SLOT_disconnect_role, "utility"))
            return html_text(
                html, arena_format(html->arena,
                                   "%s: %s, %s from the meter; lockable: %s; open contacts "
                                   "visible: %s",
                                   one->name, html_fact_or_dash(html, one, SLOT_disconnect_rating),
                                   html_fact_or_dash(html, one, SLOT_disconnect_distance_to_meter),
                                   html_fact_or_dash(html, one, SLOT_disconnect_lockable),
                                   html_fact_or_dash(html, one, SLOT_disconnect_visible_open)));
    }
    return NULL;
}

static const char *meter_text(struct html *html)
{
    const struct object *meter = first_of(html, KIND_meter);
    if (meter == NULL)
        return NULL;
    return html_text(html, arena_format(html->arena, "%s: %s, counts both ways: %s", meter->name,
                                        html_fact_or_dash(html, meter, SLOT_meter_rating),
                                        html_fact_or_dash(html, meter, SLOT_meter_bidirectional)));
}

static const char *applications_text(struct html *html)
{
    const struct design *design = html->report->design;
    const char *text = NULL;
    for (size_t i = 0; design != NULL && i < design->of_kind[KIND_paper].count; i++) {
        const struct object *paper = design->of_kind[KIND_paper].items[i];
        const char *kind = html_fact_or_dash(html, paper, SLOT_paper_kind);
        if (strncmp(kind, "interconnection", 15) != 0 && strncmp(kind, "permission", 10) != 0)
            continue;
        text = html_text(html, arena_format(html->arena, "%s%s%s: %s", text != NULL ? text : "",
                                            text != NULL ? "; " : "", kind,
                                            html_fact_or_dash(html, paper, SLOT_paper_state)));
    }
    return text;
}

static const struct check_item items[] = {
    {VISIT_ROUGH, "Array laid out as the roof plan draws it, before modules hide the rails",
     "modules-on-roof ridge-clearance access-pathway", modules_text},
    {VISIT_ROUGH, "Each attachment in sound wood, at the drawn spacing, fastener as detailed",
     "dead-load attachment* rafter* framing* lag* uplift*", attachments_text},
    {VISIT_ROUGH, "Flashing under the courses and every hole sealed", NULL, NULL},
    {VISIT_ROUGH, "Connectors of one pair together; splices in boxes that stay reachable",
     "string-connectors branch-connectors string-pairing", NULL},
    {VISIT_ROUGH, "Ground lugs, jumpers and the array's grounding conductor in place",
     "array-bonding array-ground circuit-ground electrode grounding*", grounding_text},
    {VISIT_ROUGH, "Cable held off the roof; no sharp edge; drip loops", "cable-support array-cable",
     NULL},
    {VISIT_ROUGH, "Runs inside: raceway, boxes and supports before walls are closed",
     "raceway-fill raceway-support dc-indoors rooftop-height", NULL},
    {VISIT_ROUGH, "Pictures taken of all that will be covered", NULL, NULL},

    {VISIT_FINAL, "Modules: model, number and place as approved",
     "module-listing module-pressure converter-module modules-on-roof", modules_text},
    {VISIT_FINAL, "Racking and attachments as instructed, nothing loose", "racking-listing",
     attachments_text},
    {VISIT_FINAL, "Penetrations sealed; roof covering whole", "roof-layers", NULL},
    {VISIT_FINAL, "Ways and clear strips for fire crews", "ridge-clearance access-pathway", NULL},
    {VISIT_FINAL, "Fire class of modules and racking together", "fire-class", NULL},
    {VISIT_FINAL, "Exposed conductors supported and out of reach",
     "cable-support array-cable dc-ac-apart", NULL},
    {VISIT_FINAL, "Conductors and raceways: size, kind, fill, support",
     "circuit-ampacity circuit-protection circuit-terminals raceway-fill", NULL},
    {VISIT_FINAL, "Bonding and grounding continuous to the building's electrode",
     "array-bonding array-ground electrode", grounding_text},
    {VISIT_FINAL, "Inverter: marked as utility-interactive, settings as listed, working space",
     "inverter-listing microinverter-listing inverter-working-space inverter-place",
     inverters_text},
    {VISIT_FINAL, "Rapid shutdown: works, and its switch is where the placard says",
     "rapid-shutdown shutdown-device shutdown-initiator", shutdown_text},
    {VISIT_FINAL, "Where the array meets the house: breaker, its place, the bus",
     "busbar source-breaker connection-breaker inverter-breaker supply-side feeder-connection",
     connection_text},
    {VISIT_FINAL, "Disconnects: ratings, reach, doors that open",
     "pv-disconnect disconnect-rating service-disconnect emergency-disconnect", NULL},
    {VISIT_FINAL, "Labels: all there, readable, fit for the weather", "label* shutdown-placard",
     labels_text},
    {VISIT_FINAL, "Covers off for the visit; a ladder set and tied by the installer", NULL, NULL},

    {VISIT_UTILITY, "The city's final is signed", NULL, NULL},
    {VISIT_UTILITY, "Application and agreement", "utility-papers", applications_text},
    {VISIT_UTILITY, "Disconnect by the meter: reachable at all hours, lockable, contacts seen",
     "utility-disconnect", utility_disconnect_text},
    {VISIT_UTILITY, "Inverter's model and rating as in the application", "inverter-listing",
     inverters_text},
    {VISIT_UTILITY, "Meter counts both ways, or its change is ordered", NULL, meter_text},
    {VISIT_UTILITY, "Directory and warning signs at the meter",
     "label-source-directory label-multiple-sources", NULL},
    {VISIT_UTILITY, "Left off until permission to operate is in hand", NULL, NULL},
};

const struct check_item *check_item_at(size_t at)
{
    return at < sizeof items / sizeof items[0] ? &items[at] : NULL;
}
