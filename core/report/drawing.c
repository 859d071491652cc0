#include "drawing.h"

#include <string.h>

static const struct drawing drawings[] = {
    {"roof", "Roof plan", drawing_write_roof},
    {"one-line", "One-line diagram", drawing_write_one_line},
    {"panel", "Panel schedule", drawing_write_panel},
    {"labels", "Label sheet", drawing_write_labels},
    {"loads", "Load diagram", drawing_write_loads},
};

const struct drawing *drawing_at(size_t at)
{
    return at < sizeof drawings / sizeof drawings[0] ? &drawings[at] : NULL;
}

const struct drawing *drawing_find(const char *name)
{
    const struct drawing *drawing = NULL;
    for (size_t i = 0; (drawing = drawing_at(i)) != NULL; i++)
        if (strcmp(drawing->name, name) == 0)
            return drawing;
    return NULL;
}
