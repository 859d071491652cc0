/* The drawings stand inside the report as they would as files. */
#include "html.h"

#if 1 /* until the drawings' room is whole */
void html_drawings(struct html *html)
{
    (void)html;
}
#else
#include "drawing.h"

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
#endif
