/* yaml: what libyaml refuses, told in the words of the person who wrote the file. */
#ifndef YAML_SYNTAX_H
#define YAML_SYNTAX_H
#include "yaml_reading.h"
#include <yaml.h>

/* What the tree knows and libyaml does not say. Line 0: nothing. */
struct syntax_hint {
    bool has_begun;                /* has a document? if not, only directives stood there */
    struct place open;             /* the innermost list or mapping that has not ended */
    struct place quote, quote_end; /* the last text in quotes */
};

/* One problem for the error at which the parser stopped. */
void tell_syntax(struct reading *reading, const yaml_parser_t *parser,
                 const struct syntax_hint *hint);
void tell_directive(struct reading *reading, struct place place);

#endif
