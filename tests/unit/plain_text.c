/* Looking at eight bytes at once says what looking at each says. */
#include "check.h"
#include "text.h"

#include <string.h>

/* The plain bytes at the start, counted one by one. */
static size_t count_plain(const char *bytes, size_t length)
{
    size_t at = 0;
    while (at < length && (unsigned char)bytes[at] >= 0x20 && (unsigned char)bytes[at] < 0x7F)
        at++;
    return at;
}

static void test_plain_length(void)
{
    enum { LENGTH = 27 };
    static const char plain[LENGTH + 1] = "~ ! plain text, to its end ";
    size_t differing = 0;
    for (unsigned byte = 0; byte < 256; byte++)
        for (size_t at = 0; at < LENGTH; at++)
            for (size_t length = 0; length <= LENGTH; length++) {
                char bytes[LENGTH];
                memcpy(bytes, plain, LENGTH);
                bytes[at] = (char)byte;
                differing += text_plain_length(bytes, length) != count_plain(bytes, length);
            }
    CHECK(differing == 0, "any byte at any place ends what is plain as it does byte by byte");
    for (unsigned byte = 0; byte < 256; byte++) { /* rows of one byte: borrows run through */
        char bytes[LENGTH];
        memset(bytes, (int)byte, LENGTH);
        differing += text_plain_length(bytes, LENGTH) != count_plain(bytes, LENGTH);
    }
    CHECK(differing == 0, "and so do many of them");
}

int main(void)
{
    test_plain_length();
    return checks_end();
}
