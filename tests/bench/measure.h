/* What both drivers measure with. */
#ifndef BENCH_MEASURE_H
#define BENCH_MEASURE_H
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

/* Samples of one thing, in microseconds. */
struct series {
    const char *name;
    double *samples;
    size_t count;
};

static inline double now(void)
{
    struct timespec time;
    clock_gettime(CLOCK_MONOTONIC, &time);
    return (double)time.tv_sec * 1e6 + (double)time.tv_nsec * 1e-3;
}

static inline void series_open(struct series *series, const char *name, size_t most)
{
    *series = (struct series){name, malloc(most * sizeof(double)), 0};
    if (series->samples == NULL) {
        fputs("no memory\n", stderr);
        exit(70);
    }
}

static inline int series_compare(const void *a, const void *b)
{
    double left = *(const double *)a, right = *(const double *)b;
    return (left > right) - (left < right);
}

/* The sample at a share of the sorted series: 0.5 is the median. */
static inline double series_at(struct series *series, double share)
{
    qsort(series->samples, series->count, sizeof(double), series_compare);
    return series->samples[(size_t)((double)(series->count - 1) * share)];
}

static inline void series_write(struct series *series)
{
    printf("  %-42s %9.1f µs   (middle half: %.1f to %.1f)\n", series->name, series_at(series, 0.5),
           series_at(series, 0.25), series_at(series, 0.75));
}
#endif
