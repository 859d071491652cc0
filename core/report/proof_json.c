#include "proof.h"

#include "parts.h"

static json_t *case_json(const struct proof_case *one)
{
    json_t *object = json_object();
    return json_whole(object,
                      json_put(object, "rule", json_text(one->rule)) &&
                          json_put(object, "says", json_text(one->says)) &&
                          json_put(object, "books", json_text(one->books)) &&
                          json_put(object, "as_expected", json_boolean(one->wrong == NULL)) &&
                          json_put(object, "wrong", json_text(one->wrong)) &&
                          json_put(object, "place", json_place(one->place)));
}

static json_t *lack_json(const struct proof_lack *lack)
{
    static const char *const kinds[] = {
        [LACK_CASE] = "case", [LACK_OPTION] = "option", [LACK_VALUE] = "value"};
    json_t *object = json_object();
    return json_whole(object, json_put(object, "kind", json_text(kinds[lack->kind])) &&
                                  json_put(object, "thing", json_text(lack->thing)) &&
                                  json_put(object, "lacks", json_text(lack->lacks)) &&
                                  json_put(object, "place", json_place(lack->place)));
}

static json_t *move_json(const struct proof_move *move)
{
    json_t *object = json_object();
    return json_whole(object, json_put(object, "thing", json_text(move->thing)) &&
                                  json_put(object, "how", json_text(move->how)) &&
                                  json_put(object, "tried", json_boolean(move->is_tried)) &&
                                  json_put(object, "noticed", json_boolean(move->is_noticed)) &&
                                  json_put(object, "place", json_place(move->place)));
}

static json_t *stirred_json(const struct proof *proof)
{
    if (!proof->is_stirred)
        return json_null();
    size_t noticed = proof_count_noticed(proof);
    json_t *array = json_array(), *object = json_object();
    bool is_whole = array != NULL;
    for (size_t i = 0; is_whole && i < proof->move_count; i++)
        is_whole = json_push(array, move_json(&proof->moves[i]));
    is_whole = json_put(object, "moves", array) && is_whole;
    return json_whole(object,
                      is_whole && json_put(object, "noticed", json_integer((json_int_t)noticed)) &&
                          json_put(object, "of", json_integer((json_int_t)proof->move_count)) &&
                          json_put(object, "share",
                                   proof->move_count > 0
                                       ? json_number((double)noticed / (double)proof->move_count)
                                       : json_null()));
}

static json_t *proof_json(const struct proof *proof)
{
    json_t *cases = json_array(), *lacks = json_array(), *object = json_object();
    bool is_whole = cases != NULL && lacks != NULL;
    for (size_t i = 0; is_whole && i < proof->case_count; i++)
        is_whole = json_push(cases, case_json(&proof->cases[i]));
    for (size_t i = 0; is_whole && i < proof->lack_count; i++)
        is_whole = json_push(lacks, lack_json(&proof->lacks[i]));
    is_whole = json_put(object, "cases", cases) && is_whole;
    is_whole = json_put(object, "lacks", lacks) && is_whole;
    return json_whole(object,
                      is_whole && json_put(object, "book", json_text(proof->book)) &&
                          json_put(object, "rules", json_integer((json_int_t)proof->rule_count)) &&
                          json_put(object, "not_as_expected",
                                   json_integer((json_int_t)proof_count_wrong(proof))) &&
                          json_put(object, "stirred", stirred_json(proof)));
}

static json_t *problem_json(const struct problem *problem)
{
    json_t *object = json_object();
    return json_whole(object, json_put(object, "code", json_text(problem->code)) &&
                                  json_put(object, "message", json_text(problem->message)) &&
                                  json_put(object, "place", json_place(problem->place)) &&
                                  json_put(object, "other", json_place(problem->other)) &&
                                  json_put(object, "example", json_text(problem->example)));
}

bool proof_write_json(struct text *out, const struct proof *proofs, size_t count,
                      const struct problems *problems)
{
    json_t *books = json_array(), *told = json_array(), *object = json_object();
    bool is_whole = books != NULL && told != NULL;
    for (size_t i = 0; is_whole && i < count; i++)
        is_whole = !proofs[i].is_read || json_push(books, proof_json(&proofs[i]));
    for (size_t i = 0; is_whole && i < problems->count; i++)
        is_whole = json_push(told, problem_json(&problems->items[i]));
    is_whole = json_put(object, "plumbrule", json_integer(1)) && is_whole;
    is_whole = json_put(object, "problems", told) && is_whole;
    is_whole = json_put(object, "proofs", books) && is_whole;
    bool is_written = json_write(out, json_whole(object, is_whole), JSON_INDENT(2));
    text_add(out, "\n", 1);
    return is_written && !out->is_short;
}
