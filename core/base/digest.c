/* SHA-256: FIPS 180-4, sections 4.1.2 (functions), 4.2.2 (constants), 5.1.1 (padding), 5.3.3
 * (initial value), 6.2.2 (computation). */
#include "digest.h"

#include <stdint.h>
#include <stdio.h>
#include <string.h>

enum { BLOCK = 64, ROUNDS = 64, WORDS = 8 };

static const uint32_t constants[ROUNDS] = {
    0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5,
    0xd807aa98, 0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174,
    0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da,
    0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967,
    0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85,
    0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070,
    0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3,
    0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2};

static const uint32_t beginning[WORDS] = {0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a,
                                          0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19};

static uint32_t turn(uint32_t word, unsigned count)
{
    return word >> count | word << (32 - count);
}

static void spread(uint32_t schedule[ROUNDS], const unsigned char *block)
{
    for (size_t t = 0; t < 16; t++)
        schedule[t] = (uint32_t)block[4 * t] << 24 | (uint32_t)block[4 * t + 1] << 16 |
                      (uint32_t)block[4 * t + 2] << 8 | block[4 * t + 3];
    for (size_t t = 16; t < ROUNDS; t++) {
        uint32_t a = schedule[t - 15], b = schedule[t - 2];
        schedule[t] = (turn(b, 17) ^ turn(b, 19) ^ b >> 10) + schedule[t - 7] +
                      (turn(a, 7) ^ turn(a, 18) ^ a >> 3) + schedule[t - 16];
    }
}

/* One block into the running value; w[0] to w[7] are the standard's a to h. */
static void take_in(uint32_t value[WORDS], const unsigned char *block)
{
    uint32_t schedule[ROUNDS], w[WORDS];
    spread(schedule, block);
    memcpy(w, value, sizeof w);
    for (size_t t = 0; t < ROUNDS; t++) {
        uint32_t first = w[7] + (turn(w[4], 6) ^ turn(w[4], 11) ^ turn(w[4], 25)) +
                         ((w[4] & w[5]) ^ (~w[4] & w[6])) + constants[t] + schedule[t];
        uint32_t second = (turn(w[0], 2) ^ turn(w[0], 13) ^ turn(w[0], 22)) +
                          ((w[0] & w[1]) ^ (w[0] & w[2]) ^ (w[1] & w[2]));
        memmove(w + 1, w, 7 * sizeof w[0]);
        w[4] += first;
        w[0] = first + second;
    }
    for (size_t i = 0; i < WORDS; i++)
        value[i] += w[i];
}

void digest_write(char text[DIGEST_TEXT_SIZE], const void *bytes, size_t length)
{
    const unsigned char *at = bytes;
    unsigned char last[2 * BLOCK] = {0};
    uint32_t value[WORDS];
    size_t left = length % BLOCK, whole = length - left;
    size_t end = left < BLOCK - 8 ? BLOCK : 2 * BLOCK;
    memcpy(value, beginning, sizeof value);
    for (size_t i = 0; i < whole; i += BLOCK)
        take_in(value, at + i);
    if (left > 0)
        memcpy(last, at + whole, left);
    last[left] = 0x80;
    for (size_t i = 0; i < 8; i++)
        last[end - 1 - i] = (unsigned char)((uint64_t)length * 8 >> 8 * i);
    for (size_t i = 0; i < end; i += BLOCK)
        take_in(value, last + i);
    for (size_t i = 0; i < WORDS; i++)
        snprintf(text + 8 * i, 9, "%08lx", (unsigned long)value[i]);
}
