/* The label schedule: every label the design lists, and what the books say of them. */
#include <string.h>

#include "html_tables.h"

static bool is_of_labels(const struct finding *finding)
{
    const char *name = html_rule_name(finding);
    return strncmp(name, "label", 5) == 0 || strstr(name, "placard") != NULL ||
           strcmp(finding->about_kind, "label") == 0;
}

void html_labels(struct html *html)
{
    static const char *const heads[] = {"Label",  "Kind",       "Place",     "Says",    "Letters",
                                        "Colors", "Reflective", "Permanent", "Spacing", NULL};
    static const unsigned slots[] = {
        SLOT_label_kind,  SLOT_label_place,      SLOT_label_text,      SLOT_label_letter_height,
        SLOT_label_color, SLOT_label_reflective, SLOT_label_permanent, SLOT_label_spacing};
    static const struct fact_table table = {KIND_label, "Labels that the design lists", heads,
                                            slots};
    if (html->report->design == NULL)
        return;
    html_section(html, "labels", "Label schedule");
    if (html->report->design->of_kind[KIND_label].count == 0)
        html_put(html, "p", NULL, "The design lists no label.");
    html_fact_table(html, &table);
    html_put(html, "h3", NULL, "What the books say of the labels");
    if (html_answers(html, is_of_labels) == 0)
        html_put(html, "p", NULL, "No rule in force looked at labels.");
    html_close(html);
}
