#include "html.h"

#include <string.h>

#include "page.h"

#define NAME(text) ((const xmlChar *)(text))

static int take_bytes(void *context, const char *bytes, int length)
{
    struct text *out = context;
    text_add(out, bytes, (size_t)length);
    return out->is_short ? -1 : length;
}

void html_begin(struct html *html, struct text *out, const struct report *report)
{
    *html = (struct html){.out = out, .report = report, .arena = arena_new()};
    xmlOutputBufferPtr buffer = xmlOutputBufferCreateIO(take_bytes, NULL, out, NULL);
    html->writer = buffer != NULL ? xmlNewTextWriter(buffer) : NULL; /* which owns the buffer */
    if (html->writer == NULL && buffer != NULL)
        xmlOutputBufferClose(buffer);
    html->is_short = html->writer == NULL || html->arena == NULL;
}

bool html_end(struct html *html)
{
    if (html->writer != NULL && xmlTextWriterFlush(html->writer) < 0)
        html->is_short = true;
    if (html->arena != NULL && arena_is_short(html->arena))
        html->is_short = true;
    xmlFreeTextWriter(html->writer);
    text_free(&html->clean);
    arena_free(html->arena);
    return !html->is_short && !html->out->is_short;
}

static void check(struct html *html, int written)
{
    if (written < 0)
        html->is_short = true;
}

const char *html_text(struct html *html, const char *text)
{
    if (text == NULL)
        html->is_short = true;
    return text != NULL ? text : "";
}

/* Without the control characters that no XML may hold. */
static const char *cleaned(struct html *html, const char *text)
{
    text_clear(&html->clean);
    text_add_printable(&html->clean, text, strlen(text));
    if (html->clean.is_short)
        html->is_short = true;
    return html->clean.bytes != NULL ? html->clean.bytes : "";
}

void html_set(struct html *html, const char *attribute, const char *value)
{
    const char *text = cleaned(html, html_text(html, value));
    check(html, xmlTextWriterWriteAttribute(html->writer, NAME(attribute), NAME(text)));
}

void html_open(struct html *html, const char *tag, const char *class_name)
{
    check(html, xmlTextWriterStartElement(html->writer, NAME(tag)));
    if (class_name != NULL)
        html_set(html, "class", class_name);
}

void html_say(struct html *html, const char *text)
{
    const char *clean = cleaned(html, html_text(html, text));
    check(html, xmlTextWriterWriteString(html->writer, NAME(clean)));
}

void html_close(struct html *html)
{
    check(html, xmlTextWriterFullEndElement(html->writer));
}

void html_put(struct html *html, const char *tag, const char *class_name, const char *text)
{
    html_open(html, tag, class_name);
    html_say(html, text);
    html_close(html);
}

void html_put_format(struct html *html, const char *tag, const char *class_name, const char *format,
                     ...)
{
    va_list arguments;
    va_start(arguments, format);
    const char *text = arena_format_list(html->arena, format, arguments);
    va_end(arguments);
    html_put(html, tag, class_name, text);
}

void html_void(struct html *html, const char *tag, const char *attribute, const char *value)
{
    html_open(html, tag, NULL);
    html_set(html, attribute, value);
    check(html, xmlTextWriterEndElement(html->writer));
}

void html_raw(struct html *html, const char *markup)
{
    check(html, xmlTextWriterWriteRaw(html->writer, NAME(markup)));
}

void html_section(struct html *html, const char *id, const char *title)
{
    html_raw(html, "\n");
    html_open(html, "section", NULL);
    html_set(html, "id", id);
    html_put(html, "h2", NULL, title);
}

void html_table(struct html *html, const char *class_name, const char *caption,
                const char *const *heads)
{
    html_raw(html, "\n");
    html_open(html, "div", "wide");
    html_open(html, "table", class_name);
    html_put(html, "caption", NULL, caption);
    html_open(html, "thead", NULL);
    html_open(html, "tr", NULL);
    for (size_t i = 0; heads[i] != NULL; i++) {
        html_open(html, "th", NULL);
        html_set(html, "scope", "col");
        html_say(html, heads[i]);
        html_close(html);
    }
    html_close(html);
    html_close(html);
    html_open(html, "tbody", NULL);
}

void html_table_end(struct html *html)
{
    html_close(html);
    html_close(html);
    html_close(html);
}

void html_row(struct html *html, const char *const *cells, size_t count)
{
    html_raw(html, "\n");
    html_open(html, "tr", NULL);
    for (size_t i = 0; i < count; i++) {
        html_open(html, i == 0 ? "th" : "td", NULL);
        if (i == 0)
            html_set(html, "scope", "row");
        html_say(html, cells[i] != NULL ? cells[i] : "");
        html_close(html);
    }
    html_close(html);
}

void html_link(struct html *html, const char *id, const char *text)
{
    html_open(html, "a", NULL);
    html_set(html, "href", arena_format(html->arena, "#%s", html_text(html, id)));
    html_say(html, text);
    html_close(html);
}
