/* A program of somebody else's: checks designs with the library, and writes how each ended.
 *
 *     check_design BOOKS CATALOGUES BOOK DATE DESIGN…
 *
 * cc check_design.c $(pkg-config --cflags --libs plumbrule) */
#include <plumbrule/plumbrule.h>
#include <stdio.h>
#include <string.h>

static const char *const endings[] = {"stands", "fails", "open", "unread", "rule broken"};

int main(int count, char **words)
{
    struct plumbrule *plumbrule;
    if (count < 6 || !plumbrule_open(&plumbrule))
        return 64;
    const char *const books[] = {words[3], NULL};
    const char *const book_folders[] = {words[1], NULL};
    const char *const catalogue_folders[] = {words[2], NULL};
    const struct plumbrule_options options = {.book_directories = book_folders,
                                              .catalogue_directories = catalogue_folders,
                                              .books = books,
                                              .on = words[4],
                                              .format = "ndjson"};
    int worst = 0;
    printf("plumbrule %s\n", plumbrule_version());
    for (int i = 5; i < count; i++) {
        const char *report; /* the library's, until the next call */
        size_t length;
        enum plumbrule_end end = plumbrule_check(&report, &length, plumbrule, words[i], &options);
        if (end > PLUMBRULE_RULE_BROKEN || length != strlen(report))
            worst = 70;
        else
            printf("%s: %s, a report of one line: %s\n", words[i], endings[end],
                   strchr(report, '\n') == report + length - 1 ? "yes" : "no");
        /* Where the numbers that decided come from. */
        const char *from = strstr(report, words[1]);
        printf("  books read in the folder given: %s\n", from != NULL ? "yes" : "no");
    }
    plumbrule_close(plumbrule);
    return worst;
}
