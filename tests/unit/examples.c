/* Examples that messages show: each is one that the design's reader would take, and none is odd. */
#include "check.h"
#include "model.h"

static void check_row(const struct kind *kind, const struct fact_row *row)
{
    char example[200], name[160];
    double number;
    struct quantity_fault fault;
    struct quantity quantity;
    size_t length = strlen(row->name) + 2;
    snprintf(name, sizeof name, "%s.%s", kind->name, row->name);
    fact_write_example(example, sizeof example, row);
    if (!CHECK(strlen(example) > length, name))
        return;
    struct dimension want = row->type == TYPE_QUANTITY ? measure_dimension(row->measure)
                                                       : measure_dimension(PURE_NUMBER);
    if (!CHECK(quantity_read(&quantity, example + length, strlen(example + length), want, &fault),
               example))
        return;
    number = row->type == TYPE_QUANTITY ? quantity_as(quantity, row->unit) : quantity.value;
    CHECK(number >= row->low && number <= row->high, example);
}

static void expect(enum kind_id id, const char *fact, const char *wanted)
{
    char example[200];
    const struct kind *kind = kind_at(id);
    fact_write_example(example, sizeof example, &kind->facts[kind_find_fact(kind, fact)]);
    CHECK_TEXT(example, wanted, fact);
}

int main(void)
{
    for (int id = 0; id < KIND_COUNT; id++)
        for (size_t i = 0; i < kind_at((enum kind_id)id)->fact_count; i++) {
            const struct fact_row *row = &kind_at((enum kind_id)id)->facts[i];
            if (row->type == TYPE_QUANTITY || row->type == TYPE_NUMBER || row->type == TYPE_COUNT)
                check_row(kind_at((enum kind_id)id), row);
        }
    expect(KIND_building, "year_built", "year_built: 1978");
    expect(KIND_building, "mean_roof_height", "mean_roof_height: 18 ft");
    expect(KIND_service, "rating", "rating: 200 A");
    expect(KIND_module_model, "voc_coefficient", "voc_coefficient: -0.26 %/°C");
    expect(KIND_roof_plane, "layers", "layers: 1");
    expect(KIND_roof_plane, "slope", "slope: 4/12");
    expect(KIND_design, "circuits", "circuits: [{name: circuit-1, role: PV source, …}]");
    expect(KIND_design, "service", "service: {rating: 200 A, …}");
    expect(KIND_roof, "planes", "planes: [{name: roof_plane-1, outline: …, …}]");
    return checks_end();
}
