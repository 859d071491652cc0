/* A place in a file that a person wrote. */
#ifndef BASE_PLACE_H
#define BASE_PLACE_H

struct place {
    const char *file; /* path as it was given; NULL: no place */
    unsigned line;    /* from 1; 0: the file as a whole */
    unsigned column;  /* code points from 1; 0: the line as a whole */
};

#endif
