/* Rules: a stranger's text beside a witness, which says the same whatever the stranger does. */
#include "put.h"
#include "room_trial.h"

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length)
{
    static struct room_trial trial; /* one for all: what a rule leaves behind would show */
    static const struct judge_limits limits = {
        .instructions = 20000, .memory = 4 << 20, .results = 100};
    static size_t runs;
    char path[PUT_PATH];
    char name[40];
    if (trial.judge == NULL)
        trial = room_open(&limits);
    if (++runs % 500 == 0) { /* compiled texts are kept as long as a judge */
        judge_free(trial.judge);
        trial.judge = judge_new(&limits);
        MUST(trial.judge != NULL);
    }
    snprintf(name, sizeof name, "rule%zu.lua", runs % 500);
    put_file(path, name, bytes, length);
    room_review(&trial, path);
    unlink(path);
    MUST(trial.is_done && witness_passes(&trial));
    for (size_t i = 0; i < trial.problems.count; i++)
        MUST(trial.problems.items[i].message[0] != '\0');
    for (size_t i = 0; i < trial.findings.count; i++) {
        const struct finding *finding = trial.findings.items[i];
        MUST(finding->outcome < OUTCOME_COUNT);
        MUST(finding->outcome != OUTCOME_PASS || finding->test_count > 0);
    }
    return 0;
}
