/* The part of an attachment that holds least: fasteners, mount, or what joins the array to it. */
#include "attachment.h"

#include <string.h>

#include "parameter.h"

enum { PART_CAPACITY, PART_GOVERNS, PART_FASTENERS, PART_MOUNT, PART_JOINT, PART_JOINT_HOLDS };
const struct parameter weakest_part_inputs[WEAKEST_INPUTS] = {
    GIVEN_QUANTITY("capacity", FORCE, "lbf", 0, 100000, "The least of fasteners and mount."),
    GIVEN_WORD("governs", NULL, "Which of the two that is: fasteners or mount."),
    MAYBE_QUANTITY("fasteners", FORCE, "lbf", 0, 100000, "What the fasteners hold."),
    MAYBE_QUANTITY("mount", FORCE, "lbf", 0, 100000, "What the tested mount holds."),
    MAYBE_WORD("joint", NULL, "What joins the array to it, by name. Absent: nothing counts."),
    MAYBE_QUANTITY("joint_holds", FORCE, "lbf", 0, 100000, "What that holds."),
};
const struct parameter weakest_part_results[3] = {
    GIVEN_QUANTITY("least", FORCE, "lbf", 0, 0, "What the weakest of them holds."),
    GIVEN_WORD("part", NULL, "The weakest."),
    MAYBE_WORD("others", NULL, "What the others hold, in words; none where there is none."),
};

/* "fasteners 1091 lbf, mount 1100 lbf": adds one that is there and is not the weakest. */
static const char *name_beside(const char *others, const char *part, const struct amount *holds,
                               const char *weakest, struct working *working)
{
    if (others == NULL || holds->type == AMOUNT_NONE || strcmp(part, weakest) == 0)
        return others;
    return arena_format(working->arena, "%s%s%s %.0f lbf", others, others[0] != '\0' ? ", " : "",
                        part, amount_in(*holds, "lbf", 0));
}

bool run_weakest_part(struct amount *results, const struct object *about,
                      const struct amount *inputs, struct working *working)
{
    (void)about;
    bool is_joined =
        inputs[PART_JOINT].type != AMOUNT_NONE && inputs[PART_JOINT_HOLDS].type != AMOUNT_NONE;
    bool is_joint = is_joined && number_compare(inputs[PART_JOINT_HOLDS].quantity.value,
                                                inputs[PART_CAPACITY].quantity.value) < 0;
    const char *weakest = inputs[is_joint ? PART_JOINT : PART_GOVERNS].word, *others = "";
    others = name_beside(others, "fasteners", &inputs[PART_FASTENERS], weakest, working);
    others = name_beside(others, "mount", &inputs[PART_MOUNT], weakest, working);
    if (is_joined)
        others = name_beside(others, inputs[PART_JOINT].word, &inputs[PART_JOINT_HOLDS], weakest,
                             working);
    if (others == NULL)
        return working_short(working);
    results[0] = inputs[is_joint ? PART_JOINT_HOLDS : PART_CAPACITY];
    results[0].quantity.written = NULL;
    results[1] = amount_of_word(weakest);
    if (others[0] != '\0')
        results[2] = amount_of_word(others);
    return true;
}
