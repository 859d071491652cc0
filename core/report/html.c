#include "html.h"

#include <assert.h>
#include <string.h>

#include "page.h"

void html_begin(struct html *html, struct text *out, const struct report *report)
{
    *html = (struct html){.out = out, .report = report, .arena = arena_new()};
    html->is_short = html->arena == NULL;
}

bool html_end(struct html *html)
{
    assert(html->depth == 0);
    if (html->arena != NULL && arena_is_short(html->arena))
        html->is_short = true;
    arena_free(html->arena);
    return !html->is_short && !html->out->is_short;
}

const char *html_text(struct html *html, const char *text)
{
    if (text == NULL)
        html->is_short = true;
    return text != NULL ? text : "";
}

/* What is written differently in markup, or NULL. */
static const char *reference_to(char byte)
{
    switch (byte) {
    case '<':
        return "&lt;";
    case '>':
        return "&gt;";
    case '&':
        return "&amp;";
    case '"':
        return "&quot;";
    default:
        return NULL;
    }
}

static bool is_ascii(char byte)
{
    return byte >= 0x20 && byte < 0x7F;
}

/* Escaped, and without the control characters that no XML may hold. */
static void add_escaped(struct text *out, const char *text)
{
    while (*text != '\0') {
        size_t length = 0;
        while (is_ascii(text[length]) && reference_to(text[length]) == NULL)
            length++;
        text_add(out, text, length);
        text += length;
        for (const char *reference; (reference = reference_to(*text)) != NULL; text++)
            text_add_word(out, reference);
        for (length = 0; text[length] != '\0' && !is_ascii(text[length]);)
            length++;
        if (length > 0)
            text_add_printable(out, text, length);
        text += length;
    }
}

/* Ends the start tag that attributes may still be added to. */
static void end_tag(struct html *html)
{
    if (html->is_in_tag)
        text_add(html->out, ">", 1);
    html->is_in_tag = false;
}

void html_set(struct html *html, const char *attribute, const char *value)
{
    assert(html->is_in_tag);
    text_add(html->out, " ", 1);
    text_add_word(html->out, attribute);
    text_add(html->out, "=\"", 2);
    add_escaped(html->out, html_text(html, value));
    text_add(html->out, "\"", 1);
}

void html_open(struct html *html, const char *tag, const char *class_name)
{
    assert(html->depth < HTML_DEEPEST);
    end_tag(html);
    text_add(html->out, "<", 1);
    text_add_word(html->out, tag);
    html->tags[html->depth++] = tag;
    html->is_in_tag = true;
    if (class_name != NULL)
        html_set(html, "class", class_name);
}

void html_say(struct html *html, const char *text)
{
    end_tag(html);
    add_escaped(html->out, html_text(html, text));
}

void html_close(struct html *html)
{
    assert(html->depth > 0);
    end_tag(html);
    text_add(html->out, "</", 2);
    text_add_word(html->out, html->tags[--html->depth]);
    text_add(html->out, ">", 1);
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
    text_add(html->out, "/>", 2);
    html->depth--;
    html->is_in_tag = false;
}

void html_raw(struct html *html, const char *markup)
{
    end_tag(html);
    text_add_word(html->out, markup);
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
        html_put(html, "th", NULL, heads[i]); /* no data beside them: they head columns */
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
