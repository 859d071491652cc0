#include "drawing_canvas.h"

#include <libxml/xmlwriter.h>
#include <math.h>
#include <string.h>

#define BYTES(text) ((const xmlChar *)(text))

/* What the writer answered: a negative number is a failure, which leaves the sheet short. */
static void note(struct canvas *canvas, int answer)
{
    if (answer < 0)
        canvas->is_short = true;
}

bool canvas_open(struct canvas *canvas, const char *prefix, double width,
                 const struct report *report)
{
    *canvas =
        (struct canvas){.report = report, .prefix = prefix, .width = width, .arena = arena_new()};
    canvas->buffer = xmlBufferCreate();
    if (canvas->buffer != NULL)
        canvas->pen = xmlNewTextWriterMemory(canvas->buffer, 0);
    if (canvas->pen != NULL && canvas->arena != NULL)
        return true;
    canvas_drop(canvas);
    return false;
}

void canvas_drop(struct canvas *canvas)
{
    if (canvas->pen != NULL)
        xmlFreeTextWriter(canvas->pen);
    if (canvas->buffer != NULL)
        xmlBufferFree(canvas->buffer);
    arena_free(canvas->arena);
    *canvas = (struct canvas){0};
}

/* The root element is written last, when the sheet's length is known, into a buffer of its own. */
static bool begin_root(struct canvas *root, const struct canvas *body, bool is_true_size)
{
    const char *unit = is_true_size ? "in" : "";
    double height = ceil(body->bottom + MARGIN);
    *root = (struct canvas){.arena = body->arena, .prefix = body->prefix};
    root->buffer = xmlBufferCreate();
    root->pen = root->buffer != NULL ? xmlNewTextWriterMemory(root->buffer, 0) : NULL;
    if (root->pen == NULL)
        return false;
    canvas_begin(root, "svg");
    canvas_attribute(root, "xmlns", "http://www.w3.org/2000/svg");
    canvas_attribute(root, "class", "drawing");
    canvas_attribute(root, "role", "img");
    canvas_attribute(root, "aria-labelledby",
                     arena_format(root->arena, "%s-title %s-desc", body->prefix, body->prefix));
    canvas_attribute(root, "width",
                     is_true_size ? arena_format(root->arena, "%g%s", body->width / 96, unit)
                                  : "100%");
    if (is_true_size)
        canvas_attribute(root, "height", arena_format(root->arena, "%.4f%s", height / 96, unit));
    canvas_attribute(root, "viewBox", arena_format(root->arena, "0 0 %g %g", body->width, height));
    canvas_attribute(root, "font-family", "Arial, Helvetica, 'Liberation Sans', sans-serif");
    canvas_attribute(root, "font-size", "12");
    canvas_attribute(root, "fill", INK);
    canvas_attribute(root, "text-rendering", "geometricPrecision"); /* small is as wide as large */
    return true;
}

static void write_named(struct canvas *canvas, const char *element, const char *text)
{
    canvas_begin(canvas, element);
    canvas_id(canvas, element);
    note(canvas, xmlTextWriterWriteString(canvas->pen, BYTES(text)));
    canvas_end(canvas);
}

bool canvas_close(struct canvas *canvas, struct text *out, const char *title,
                  const char *description, bool is_true_size)
{
    struct canvas root = {0};
    canvas_patterns(canvas);
    bool is_begun = !canvas->is_short && !arena_is_short(canvas->arena) &&
                    xmlTextWriterFlush(canvas->pen) >= 0 && begin_root(&root, canvas, is_true_size);
    if (is_begun) {
        write_named(&root, "title", title);
        write_named(&root, "desc", description);
        canvas_rect(&root, 0, 0, canvas->width, ceil(canvas->bottom + MARGIN),
                    (struct stroke){.fill = PAPER});
        note(&root, xmlTextWriterWriteRaw(root.pen, xmlBufferContent(canvas->buffer)));
        canvas_end(&root);
        note(&root, xmlTextWriterEndDocument(root.pen));
        note(&root, xmlTextWriterFlush(root.pen));
        is_begun = !root.is_short && !arena_is_short(canvas->arena);
        if (is_begun)
            text_add(out, (const char *)xmlBufferContent(root.buffer),
                     (size_t)xmlBufferLength(root.buffer));
    }
    if (root.pen != NULL)
        xmlFreeTextWriter(root.pen);
    if (root.buffer != NULL)
        xmlBufferFree(root.buffer);
    canvas_drop(canvas);
    return is_begun && !out->is_short;
}

void canvas_begin(struct canvas *canvas, const char *element)
{
    note(canvas, xmlTextWriterStartElement(canvas->pen, BYTES(element)));
}

void canvas_end(struct canvas *canvas)
{
    note(canvas, xmlTextWriterEndElement(canvas->pen));
}

void canvas_attribute(struct canvas *canvas, const char *name, const char *value)
{
    if (value == NULL)
        canvas->is_short = true;
    else
        note(canvas, xmlTextWriterWriteAttribute(canvas->pen, BYTES(name), BYTES(value)));
}

void canvas_write_number(char *buffer, size_t size, double value)
{
    double rounded = round(value * 100) / 100;
    number_write(buffer, size, rounded == 0 ? 0 : rounded);
}

void canvas_number(struct canvas *canvas, const char *name, double value)
{
    char buffer[40];
    canvas_write_number(buffer, sizeof buffer, value);
    canvas_attribute(canvas, name, buffer);
}

void canvas_id(struct canvas *canvas, const char *name)
{
    canvas_attribute(canvas, "id", arena_format(canvas->arena, "%s-%s", canvas->prefix, name));
}

void canvas_reference(struct canvas *canvas, const char *attribute, const char *name)
{
    canvas_attribute(canvas, attribute,
                     arena_format(canvas->arena, "url(#%s-%s)", canvas->prefix, name));
}

void canvas_string(struct canvas *canvas, const char *text)
{
    struct text clean = {0}; /* a design may hold what XML cannot: XML's own rules come last */
    text_add_printable(&clean, text, strlen(text));
    for (size_t i = 0; i + 2 < clean.length; i++)
        if ((unsigned char)clean.bytes[i] == 0xEF && (unsigned char)clean.bytes[i + 1] == 0xBF &&
            (unsigned char)clean.bytes[i + 2] >= 0xBE)
            clean.bytes[i + 2] = (char)0xBD; /* U+FFFE and U+FFFF are no characters of XML */
    if (clean.is_short)
        canvas->is_short = true;
    else if (clean.length > 0)
        note(canvas, xmlTextWriterWriteString(canvas->pen, BYTES(clean.bytes)));
    text_free(&clean);
}

void canvas_title(struct canvas *canvas, const char *title)
{
    canvas_begin(canvas, "title");
    canvas_string(canvas, title);
    canvas_end(canvas);
}

void canvas_stroke(struct canvas *canvas, struct stroke stroke)
{
    canvas_attribute(canvas, "fill", stroke.fill != NULL ? stroke.fill : "none");
    canvas_pen(canvas, stroke);
}

void canvas_pen(struct canvas *canvas, struct stroke stroke)
{
    if (stroke.color == NULL)
        return;
    canvas_attribute(canvas, "stroke", stroke.color);
    canvas_number(canvas, "stroke-width", stroke.width);
    if (stroke.dashes != NULL)
        canvas_attribute(canvas, "stroke-dasharray", stroke.dashes);
}

void canvas_reach(struct canvas *canvas, double y)
{
    canvas->bottom = fmax(canvas->bottom, y);
}
