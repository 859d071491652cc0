/* Paths, from the command line and from a list. */
#include "batch_inside.h"

#include <errno.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

/* Adds to the line what it holds of the buffer; true: it is whole. */
static bool take_line(struct path_source *source)
{
    const char *from = source->buffer + source->at;
    size_t left = source->used - source->at;
    const char *end = memchr(from, '\n', left);
    size_t length = end != NULL ? (size_t)(end - from) : left;
    size_t room = PATH_BYTES - source->line.length;
    text_add(&source->line, from, length < room ? length : room);
    source->at += length + (end != NULL);
    return end != NULL;
}

/* A list from elsewhere may end its lines with a carriage return, too. */
static size_t length_of(const struct text *line)
{
    return line->length - (line->length > 0 && line->bytes[line->length - 1] == '\r');
}

static enum source_state take_from_list(struct text *path, struct path_source *source)
{
    for (;;) {
        bool is_whole = source->at < source->used && take_line(source);
        if (!is_whole && source->at < source->used)
            continue;
        if (!is_whole && source->list >= 0)
            return SOURCE_WAIT;
        if (length_of(&source->line) > 0 || source->line.is_short) {
            text_add(path, source->line.bytes, length_of(&source->line));
            path->is_short = path->is_short || source->line.is_short;
            text_clear(&source->line);
            return SOURCE_PATH;
        }
        text_clear(&source->line);
        if (!is_whole)
            return SOURCE_END;
    }
}

enum source_state source_next(struct text *path, struct path_source *source)
{
    text_clear(path);
    if (source->next < source->named_count) {
        text_add_word(path, source->named[source->next++]);
        return SOURCE_PATH;
    }
    return take_from_list(path, source);
}

void source_fill(struct path_source *source)
{
    ssize_t step = read(source->list, source->buffer, sizeof source->buffer);
    if (step < 0 && (errno == EINTR || errno == EAGAIN))
        return;
    source->at = 0;
    source->used = step > 0 ? (size_t)step : 0;
    if (step < 0)
        source->error = errno;
    if (step <= 0)
        source->list = -1;
}

size_t source_count(const struct path_source *source)
{
    struct stat about;
    size_t count = source->named_count;
    char buffer[16 * 1024], last = '\n';
    if (source->list < 0)
        return count;
    off_t at = lseek(source->list, 0, SEEK_CUR);
    if (at < 0 || fstat(source->list, &about) != 0 || !S_ISREG(about.st_mode))
        return 0;
    for (;;) {
        ssize_t step = pread(source->list, buffer, sizeof buffer, at);
        if (step <= 0)
            return count;
        for (ssize_t i = 0; i < step; i++) {
            bool is_end = buffer[i] == '\n' || buffer[i] == '\r';
            count += last == '\n' && !is_end;
            last = is_end ? '\n' : buffer[i];
        }
        at += step;
    }
}
