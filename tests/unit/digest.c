/* SHA-256 against the examples that NIST publishes with FIPS 180-4 ("SHA256.pdf" of the example
 * values and the byte test vectors SHA256ShortMsg), and against coreutils' sha256sum at lengths
 * around the ends of blocks. */
#include "digest.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static int wrong;

static void expect(const char *what, const void *bytes, size_t length, const char *digest)
{
    char text[DIGEST_TEXT_SIZE];
    digest_write(text, bytes, length);
    if (strcmp(text, digest) == 0)
        return;
    wrong++;
    fprintf(stderr, "%s: %s, not %s\n", what, text, digest);
}

static void expect_million(void)
{
    enum { MILLION = 1000000 };
    char *bytes = malloc(MILLION);
    if (bytes == NULL)
        abort();
    memset(bytes, 'a', MILLION);
    expect("a million a", bytes, MILLION,
           "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
    free(bytes);
}

/* A digest of 55, 56, 63, 64 and 65 letters: the padding takes one block, two, two, two, two. */
static void expect_lengths(void)
{
    static const struct {
        size_t length;
        const char *digest;
    } rows[] = {
        {55, "9f4390f8d30c2dd92ec9f095b65e2b9ae9b0a925a5258e241c9f1e910f734318"},
        {56, "b35439a4ac6f0948b6d6f9e3c6af0f5f590ce20f1bde7090ef7970686ec6738a"},
        {63, "7d3e74a05d7db15bce4ad9ec0658ea98e3f06eeecf16b4c6fff2da457ddc2f34"},
        {64, "ffe054fe7ae0cb6dc65c3af9b61d5209f439851db43d0ba5997337df154668eb"},
        {65, "635361c48bb9eab14198e76ea8ab7f1a41685d6ad62aa9146d301d4f17eb0ae0"},
        {119, "31eba51c313a5c08226adf18d4a359cfdfd8d2e816b13f4af952f7ea6584dcfb"},
        {120, "2f3d335432c70b580af0e8e1b3674a7c020d683aa5f73aaaedfdc55af904c21c"},
        {128, "6836cf13bac400e9105071cd6af47084dfacad4e5e302c94bfed24e013afb73e"},
    };
    char bytes[200];
    memset(bytes, 'a', sizeof bytes);
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++)
        expect("letters", bytes, rows[i].length, rows[i].digest);
}

int main(void)
{
    expect("nothing", "", 0, "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    expect("abc", "abc", 3, "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    expect("two blocks", "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq", 56,
           "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    expect("one byte", "\xbd", 1,
           "68325720aabd7c82f30f554b313d0570c95accbb7dc4b5aae11204c08ffe732b");
    expect_million();
    expect_lengths();
    return wrong > 0;
}
