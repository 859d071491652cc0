/* The jobsite safety sheet: one page to hang where the crew sees it. Blank lines are for what no
 * design tells. What everybody keeps to: common practice of the trade, no source. */
#include <string.h>

#include "html_tables.h"

static bool is_of_jobsite(const struct finding *finding)
{
    return strcmp(finding->about_kind, "jobsite") == 0 ||
           strcmp(finding->about_kind, "person") == 0 ||
           (finding->rule->book != NULL && strcmp(finding->rule->book->name, "osha") == 0);
}

static void write_crew(struct html *html)
{
    static const char *const heads[] = {"Person",       "Role",      "License",
                                        "Fall-trained", "First aid", NULL};
    static const unsigned slots[] = {SLOT_person_role, SLOT_person_license,
                                     SLOT_person_fall_trained, SLOT_person_first_aid};
    static const struct fact_table table = {KIND_person, "Crew", heads, slots};
    html_fact_table(html, &table);
}

static void write_place(struct html *html)
{
    const struct objects *projects = &html->report->design->of_kind[KIND_project];
    const struct object *project = projects->count > 0 ? projects->items[0] : NULL;
    html_open(html, "p", "address");
    html_put(html, "strong", NULL,
             project != NULL ? html_fact_or_dash(html, project, SLOT_project_address) : "–");
    if (project != NULL)
        html_put_format(html, "span", NULL, ", installer %s",
                        html_fact_or_dash(html, project, SLOT_project_installer));
    html_close(html);
}

void html_jobsite(struct html *html)
{
    static const unsigned slots[] = {
        SLOT_jobsite_fall_protection,        SLOT_jobsite_working_height,
        SLOT_jobsite_guardrail_height,       SLOT_jobsite_ladder_extension,
        SLOT_jobsite_ladder_base_ratio,      SLOT_jobsite_ladder_tied,
        SLOT_jobsite_overhead_line_distance, SLOT_jobsite_overhead_line_voltage,
        SLOT_jobsite_modules_by_hoist,       SLOT_jobsite_lifters,
        SLOT_jobsite_skylights_guarded,      SLOT_jobsite_perimeter_marked,
        SLOT_jobsite_lockout_plan,           SLOT_jobsite_rescue_plan};
    static const char *const always[] = {
        "Modules in light are live: leads stay connected pair to pair or capped, and nobody opens "
        "a connector under load.",
        "Locked out, tagged and measured dead before hands go in; line side of a service stays "
        "live whatever is switched off here.",
        "Rapid shutdown lowers the voltage of the array's conductors; it does not make the array "
        "dead.",
        "Nobody works on the roof in wind, rain, ice or lightning, or alone.",
        "The ladder, the anchors and each harness are looked at before they are climbed or worn."};
    if (html->report->design == NULL)
        return;
    const struct objects *sites = &html->report->design->of_kind[KIND_jobsite];
    html_section(html, "jobsite", "Jobsite safety sheet");
    write_place(html);
    if (sites->count == 0)
        html_put(html, "p", NULL, "The design says nothing of the jobsite.");
    else
        html_fact_list(html, sites->items[0], slots, sizeof slots / sizeof slots[0]);
    write_crew(html);
    html_put(html, "h3", NULL, "What the books say of the jobsite");
    if (html_answers(html, is_of_jobsite) == 0)
        html_put(html, "p", NULL, "No rule in force looked at it.");
    html_put(html, "h3", NULL, "Always");
    html_open(html, "ul", NULL);
    for (size_t i = 0; i < sizeof always / sizeof always[0]; i++)
        html_put(html, "li", NULL, always[i]);
    html_close(html);
    html_put(html, "p", "sign", "Emergency number and nearest hospital:");
    html_put(html, "p", "sign", "In charge of the crew, and of first aid:");
    html_put(html, "p", "sign", "Talked through with all on:");
    html_close(html);
}
