#include "digest.h"

#include <assert.h>
#include <nettle/base16.h>
#include <nettle/sha2.h>

static_assert(DIGEST_TEXT_SIZE == BASE16_ENCODE_LENGTH(SHA256_DIGEST_SIZE) + 1, "digits and a NUL");

void digest_write(char text[DIGEST_TEXT_SIZE], const void *bytes, size_t length)
{
    struct sha256_ctx context;
    uint8_t digest[SHA256_DIGEST_SIZE];
    sha256_init(&context);
    sha256_update(&context, length, bytes);
    sha256_digest(&context, sizeof digest, digest);
    base16_encode_update(text, sizeof digest, digest);
    text[DIGEST_TEXT_SIZE - 1] = '\0';
}
