/* What a second processor of this machine adds to bare arithmetic, which no memory holds up: two
 * that are threads of one core share its units and add less than one. Prints the rate of two
 * processes over the rate of one, the median of nine rounds. */
#include <stdint.h>
#include <sys/wait.h>
#include <unistd.h>

#include "measure.h"

enum { ROUNDS = 9, STEPS = 100 * 1000 * 1000 };

/* Eight chains that do not wait for each other, each step as it stands: they keep all units busy.
 */
static void spin(void)
{
    uint64_t a = 1, b = 2, c = 3, d = 4, e = 5, f = 6, g = 7, h = 8;
    for (long i = 0; i < STEPS; i++) {
        a += 3;
        b ^= 5;
        c += 7;
        d ^= 9;
        e += 11;
        f ^= 13;
        g += 15;
        h ^= 17;
        __asm__ volatile(""
                         : "+r"(a), "+r"(b), "+r"(c), "+r"(d), "+r"(e), "+r"(f), "+r"(g), "+r"(h));
    }
}

static double seconds_of(int processes)
{
    double start = now();
    for (int i = 0; i < processes; i++)
        if (fork() == 0) {
            spin();
            _exit(0);
        }
    while (wait(NULL) > 0)
        ;
    return now() - start;
}

int main(void)
{
    struct series gain;
    series_open(&gain, "two / one", ROUNDS);
    for (int i = 0; i < ROUNDS; i++) {
        double one = seconds_of(1), two = seconds_of(2);
        gain.samples[gain.count++] = 2 * one / two;
    }
    printf("%.2f\n", series_at(&gain, 0.5));
    free(gain.samples);
    return 0;
}
