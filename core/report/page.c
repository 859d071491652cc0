#include "page.h"

#include <string.h>

static const char replacement[] = "\xEF\xBF\xBD"; /* U+FFFD */

/* Bytes of a code point that may stand on a terminal, or 0. The tab is one, C0, DEL and C1 are not.
 */
static size_t printable_length(const char *bytes, size_t length)
{
    unsigned char first = (unsigned char)bytes[0];
    size_t step = first < 0x80 ? 1 : first < 0xE0 ? 2 : first < 0xF0 ? 3 : 4;
    if (first < 0x80)
        return first == '\t' || (first >= 0x20 && first != 0x7F) ? 1 : 0;
    if (step > length || !text_is_utf8(bytes, step, NULL))
        return 0;
    return first == 0xC2 && (unsigned char)bytes[1] < 0xA0 ? 0 : step;
}

void text_add_printable(struct text *out, const char *bytes, size_t length)
{
    size_t from = 0, at = 0;
    while (at < length) {
        at += text_plain_length(bytes + at, length - at);
        if (at == length)
            break;
        size_t step = printable_length(bytes + at, length - at);
        if (step > 0) {
            at += step;
            continue;
        }
        text_add(out, bytes + from, at - from);
        text_add_word(out, replacement);
        at +=
            (unsigned char)bytes[at] == 0xC2 && length - at > 1 && text_is_utf8(bytes + at, 2, NULL)
                ? 2 /* a C1 control is one character */
                : 1;
        from = at;
    }
    text_add(out, bytes + from, at - from);
}

static const char *style_begin(enum style style)
{
    static const char *const codes[] = {
        [STYLE_PLAIN] = "",          [STYLE_STRONG] = "\x1b[1m", [STYLE_BAD] = "\x1b[1;31m",
        [STYLE_UNSURE] = "\x1b[33m", [STYLE_GOOD] = "\x1b[32m",  [STYLE_FAINT] = "\x1b[2m"};
    return codes[style];
}

void page_add_styled(struct page *page, enum style style, const char *text)
{
    bool is_styled = page->with_color && style != STYLE_PLAIN;
    if (is_styled)
        text_add_word(page->out, style_begin(style));
    text_add_printable(page->out, text, strlen(text));
    if (is_styled)
        text_add_word(page->out, "\x1b[0m");
}

static void add_spaces(struct text *out, size_t count)
{
    static const char spaces[] = "                ";
    for (size_t step; count > 0; count -= step) {
        step = count < sizeof spaces - 1 ? count : sizeof spaces - 1;
        text_add(out, spaces, step);
    }
}

/* The next word: up to a space or line end, but a percent sign stays with its number. */
static size_t word_length(const char *text, bool *is_plain)
{
    size_t length = 0;
    *is_plain = true;
    for (;; length++) {
        char byte = text[length];
        if (byte == '\0' || byte == '\n' || (byte == ' ' && text[length + 1] != '%'))
            return length;
        if (byte < ' ' || byte > '~')
            *is_plain = false;
    }
}

static bool is_gap(const char *text)
{
    return text[0] == ' ' && text[1] != '%';
}

static void begin_line(struct page *page, unsigned indent)
{
    text_add(page->out, "\n", 1);
    add_spaces(page->out, indent);
}

/* Printable ASCII with no space at its ends and none doubled is laid out line by line: nearly all
 * that is told is such. */
static void add_lines(struct page *page, unsigned indent, size_t column, const char *text,
                      size_t length)
{
    for (;;) {
        size_t room = column < page->width ? page->width - column : 0, take = room;
        if (length <= room)
            break;
        while (take > 0 && !is_gap(text + take))
            take--;
        if (take == 0) /* one word is longer than the line */
            while (take < length && (take == 0 || !is_gap(text + take)))
                take++;
        if (take == length)
            break;
        text_add(page->out, text, take);
        begin_line(page, indent);
        text += take + 1;
        length -= take + 1;
        column = indent;
    }
    text_add(page->out, text, length);
    text_add(page->out, "\n", 1);
}

/* Lays the words of `text` out, the first line already filled up to `column`. */
static void add_words(struct page *page, unsigned indent, size_t column, const char *text)
{
    bool is_at_start = true;
    size_t whole = strlen(text);
    if (text_plain_length(text, whole) == whole && whole > 0 && text[0] != ' ' &&
        text[whole - 1] != ' ' && strstr(text, "  ") == NULL) {
        add_lines(page, indent, column, text, whole);
        return;
    }
    while (*text != '\0') {
        if (*text == ' ') {
            text++;
            continue;
        }
        bool is_plain;
        size_t length = word_length(text, &is_plain);
        size_t points = is_plain ? length : text_count_points(text, length);
        bool is_line_end = *text == '\n';
        if (is_line_end || (!is_at_start && column + 1 + points > page->width)) {
            begin_line(page, indent);
            column = indent;
            is_at_start = true;
            text += is_line_end;
            continue;
        }
        /* The space before a word stands before it in the text, too. */
        if (is_plain)
            text_add(page->out, text - !is_at_start, length + !is_at_start);
        else {
            text_add(page->out, " ", !is_at_start);
            text_add_printable(page->out, text, length);
        }
        column += points + !is_at_start;
        is_at_start = false;
        text += length;
    }
    text_add(page->out, "\n", 1);
}

void page_paragraph(struct page *page, unsigned label_at, const char *label, enum style style,
                    unsigned indent, const char *text)
{
    size_t column = label_at;
    if (label != NULL) {
        add_spaces(page->out, label_at);
        page_add_styled(page, style, label);
        column += text_count_points(label, strlen(label));
    } else
        column = 0;
    if (column < indent) {
        add_spaces(page->out, indent - column);
        column = indent;
    } else if (label != NULL) {
        text_add(page->out, " ", 1);
        column += 1;
    }
    add_words(page, indent, column, text);
}

void page_gap(struct page *page)
{
    text_add(page->out, "\n", 1);
}

void page_heading(struct page *page, enum style style, const char *text)
{
    page_gap(page);
    page_add_styled(page, style, text);
    text_add(page->out, "\n", 1);
}
