/* Text on a sheet: real text, measured beforehand so that no two meet. */
#include "drawing_canvas.h"

#include <math.h>
#include <string.h>

/* Widths of the letters from space to ~ in thousandths of their height, as the common sans-serif
 * faces have them; from memory of published font metrics. */
static const short widths[] = {
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333,  278, 278, 556, 556, 556,
    556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667,
    611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667,  611, 722, 667, 944, 667,
    667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278,  556, 556, 222, 222, 500,
    222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500,  500, 334, 260, 334, 584};

/* The page may stand in a wider face than the one measured. */
#define FACE_WIDTH 1.17
#define BOLD_WIDTH 1.1

static double point_width(unsigned char lead)
{
    if (lead < 0x20 || lead == 0x7F)
        return 556;
    if (lead < 0x80)
        return widths[lead - 0x20];
    return lead >= 0xE3 ? 1350 : 700; /* wide scripts and pictures, else letters */
}

double lettering_width(const char *text, size_t length, double size, bool is_bold)
{
    double sum = 0;
    for (size_t i = 0; i < length; i++)
        if (((unsigned char)text[i] & 0xC0) != 0x80)
            sum += point_width((unsigned char)text[i]);
    return sum / 1000 * size * FACE_WIDTH * (is_bold ? BOLD_WIDTH : 1);
}

static double width_of(const char *text, struct lettering lettering)
{
    return lettering_width(text, strlen(text), lettering.size, lettering.is_bold);
}

/* How many bytes of whole code points fit. */
static size_t fitting(const char *text, size_t length, double width, struct lettering lettering)
{
    double room = width / (FACE_WIDTH * (lettering.is_bold ? BOLD_WIDTH : 1)) * 1000, sum = 0;
    for (size_t i = 0; i < length; i++) {
        if (((unsigned char)text[i] & 0xC0) == 0x80)
            continue;
        sum += lettering.size * point_width((unsigned char)text[i]);
        if (sum > room)
            return i;
    }
    return length;
}

static const char *cut(struct canvas *canvas, const char *text, struct lettering lettering)
{
    if (lettering.most_width <= 0 || width_of(text, lettering) <= lettering.most_width)
        return text;
    double room = lettering.most_width - width_of("…", lettering);
    size_t fits = fitting(text, strlen(text), room, lettering);
    const char *part = arena_format(canvas->arena, "%.*s…", (int)fits, text);
    return part != NULL ? part : "";
}

static struct box box_of(double x, double y, struct lettering lettering, const char *text)
{
    double width = width_of(text, lettering);
    double left = lettering.anchor == ANCHOR_START    ? x
                  : lettering.anchor == ANCHOR_MIDDLE ? x - width / 2
                                                      : x - width;
    return (struct box){left, y - lettering.size, left + width, y + 0.28 * lettering.size};
}

bool canvas_is_free(const struct canvas *canvas, struct box box)
{
    for (size_t i = 0; i < canvas->box_count; i++) {
        const struct box *other = &canvas->boxes[i];
        if (box.left < other->right && other->left < box.right && box.top < other->bottom &&
            other->top < box.bottom)
            return false;
    }
    return true;
}

void canvas_keep(struct canvas *canvas, struct box box)
{
    struct box *boxes = arena_grow(canvas->arena, canvas->boxes, canvas->box_count,
                                   &canvas->box_capacity, sizeof *boxes);
    canvas->is_short |= boxes == NULL;
    if (boxes == NULL)
        return;
    canvas->boxes = boxes;
    boxes[canvas->box_count++] = box;
}

void canvas_text(struct canvas *canvas, double x, double y, struct lettering lettering,
                 const char *text)
{
    static const char *const anchors[] = {"start", "middle", "end"};
    if (text == NULL || text[0] == '\0') {
        canvas->is_short |= text == NULL;
        return;
    }
    const char *shown = cut(canvas, text, lettering);
    canvas_begin(canvas, "text");
    canvas_number(canvas, "x", x);
    canvas_number(canvas, "y", y);
    if (lettering.size != 12)
        canvas_number(canvas, "font-size", lettering.size);
    if (lettering.anchor != ANCHOR_START)
        canvas_attribute(canvas, "text-anchor", anchors[lettering.anchor]);
    if (lettering.is_bold)
        canvas_attribute(canvas, "font-weight", "bold");
    if (lettering.fill != NULL && strcmp(lettering.fill, INK) != 0)
        canvas_attribute(canvas, "fill", lettering.fill);
    if (lettering.has_halo) {
        canvas_attribute(canvas, "stroke", PAPER);
        canvas_attribute(canvas, "stroke-width", "3");
        canvas_attribute(canvas, "stroke-linejoin", "round");
        canvas_attribute(canvas, "paint-order", "stroke");
    }
    if (shown != text)
        canvas_title(canvas, text);
    canvas_string(canvas, shown);
    canvas_end(canvas);
    canvas_keep(canvas, box_of(x, y, lettering, shown));
    canvas_reach(canvas, y + 0.3 * lettering.size);
}

void canvas_text_format(struct canvas *canvas, double x, double y, struct lettering lettering,
                        const char *format, ...)
{
    va_list arguments;
    va_start(arguments, format);
    const char *text = arena_format_list(canvas->arena, format, arguments);
    va_end(arguments);
    canvas_text(canvas, x, y, lettering, text);
}

/* The bytes of the next line: up to the last space that fits, or within a word that is too long. */
static size_t next_line(const char *text, double width, struct lettering lettering)
{
    size_t length = strlen(text), fits = fitting(text, length, width, lettering);
    if (fits == length)
        return length;
    size_t at = fits;
    while (at > 0 && text[at] != ' ')
        at--;
    if (at > 0)
        return at;
    return fits > 0 ? fits : text_cut(text, length, 4 < length ? 4 : length);
}

double canvas_paragraph(struct canvas *canvas, double x, double y, double width, size_t lines,
                        struct lettering lettering, const char *text)
{
    if (text == NULL) {
        canvas->is_short = true;
        return y;
    }
    for (size_t line = 1; *text != '\0'; line++) {
        size_t length = next_line(text, width, lettering);
        if (line == lines && text[length] != '\0') { /* the last one takes what fits of the rest */
            struct lettering last = lettering;
            last.most_width = width;
            canvas_text(canvas, x, y, last, text);
            return y + 1.35 * lettering.size;
        }
        canvas_text(canvas, x, y, lettering, arena_copy(canvas->arena, text, length));
        y += 1.35 * lettering.size;
        text += length;
        text += strspn(text, " ");
    }
    return y;
}

size_t canvas_count_lines(double width, struct lettering lettering, const char *text)
{
    size_t lines = 0;
    while (text != NULL && *text != '\0') {
        text += next_line(text, width, lettering);
        text += strspn(text, " ");
        lines++;
    }
    return lines;
}

bool canvas_place(struct canvas *canvas, const struct point *points, const enum anchor *anchors,
                  size_t count, struct lettering lettering, const char *text)
{
    if (text == NULL) {
        canvas->is_short = true;
        return false;
    }
    const char *shown = cut(canvas, text, lettering);
    for (size_t i = 0; i < count; i++) {
        lettering.anchor = anchors[i];
        struct box box = box_of(points[i].x, points[i].y, lettering, shown);
        if (box.left < 4 || box.right > canvas->width - 4 || box.top < 4 ||
            !canvas_is_free(canvas, box))
            continue;
        canvas_text(canvas, points[i].x, points[i].y, lettering, text);
        return true;
    }
    return false;
}
