/* The drawings stand inside the report as they would as files. */
#include <string.h>

#include "drawing.h"
#include "html.h"

static void write_drawing(struct html *html, const struct drawing *drawing)
{
    struct text svg = {0};
    if (!drawing->write(&svg, html->report) || svg.is_short || svg.bytes == NULL)
        html->is_short = true;
    else {
        html_open(html, "figure", drawing->name);
        html_set(html, "id",
                 html_text(html, arena_format(html->arena, "figure-%s", drawing->name)));
        html_put(html, "h3", NULL, drawing->title);
        if (strcmp(drawing->name, "labels") == 0)
            html_put_format(html, "p", "paper-only",
                            "For labels at their true size print what plumbrule draw %s --what "
                            "labels writes.",
                            html->report->design_path);
        html_raw(html, svg.bytes);
        html_close(html);
    }
    text_free(&svg);
}

void html_drawings(struct html *html)
{
    const struct drawing *drawing;
    if (html->report->design == NULL)
        return;
    html_section(html, "drawings", "Drawings");
    for (size_t i = 0; (drawing = drawing_at(i)) != NULL; i++)
        write_drawing(html, drawing);
    html_close(html);
}
