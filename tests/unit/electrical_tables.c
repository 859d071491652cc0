/* The electrical tables: as their sources have them, and sane where physics or arithmetic tells. */
#include "ampacity.h"
#include "conductor.h"
#include "electrical_csv.h"
#include "model.h"
#include "ocpd.h"
#include "raceway.h"
#include "voltage.h"

static const int columns[] = {60, 75, 90};
static const char *const materials[] = {"copper", "aluminum"};
static const char *const short_materials[] = {"cu", "al"};

/* "10" and "1/0" are AWG, "250" is kcmil. */
static const char *size_of(const char *cell)
{
    static char size[32];
    bool is_awg = strchr(cell, '/') != NULL || atoi(cell) <= 18;
    snprintf(size, sizeof size, "%s %s", cell, is_awg ? "AWG" : "kcmil");
    return size;
}

static void test_sizes_are_the_vocabulary(void)
{
    const struct vocabulary *words = vocabulary_at(WORDS_conductor_size);
    double before = 0, kcmil = 0;
    for (size_t i = 0; i < words->count; i++) {
        const char *size = conductor_size_at(i);
        CHECK_TEXT(size, words->words[i], "the tables spell sizes as the design does");
        CHECK(conductor_kcmil(&kcmil, size) && kcmil > before, "sizes rise");
        before = kcmil;
    }
    CHECK(conductor_size_at(words->count) == NULL, "no size more than the vocabulary");
    CHECK(!conductor_kcmil(&kcmil, "5 elephants") && !conductor_kcmil(&kcmil, "9000 kcmil"),
          "no cross-section for what is no size");
}

static void check_ampacity_file(const char *name, const char *size_column,
                                enum ampacity_environment environment, int material_count)
{
    struct csv csv;
    csv_read(&csv, name);
    for (int row = 0; row < csv.rows; row++)
        for (int m = 0; m < material_count; m++)
            for (int c = 0; c < 3; c++) {
                char column[16];
                snprintf(column, sizeof column, "%s_%dC", short_materials[m], columns[c]);
                double is = 0, should = csv_number(&csv, row, column);
                const char *size = size_of(csv_cell(&csv, row, size_column));
                bool found = ampacity_at(&is, size, materials[m], columns[c], environment);
                CHECK(found == (should > 0), "an ampacity where the source has one");
                CHECK_NEAR(is, should, 0, "ampacity as the source has it");
            }
}

/* Rises with size and with the column. */
static void check_ampacity_rises(const char *material, enum ampacity_environment environment)
{
    double before[3] = {0, 0, 0};
    int found = 0;
    for (size_t i = 0; conductor_size_at(i) != NULL; i++)
        for (int c = 0; c < 3; c++) {
            double is;
            if (!ampacity_at(&is, conductor_size_at(i), material, columns[c], environment))
                continue;
            found++;
            CHECK(is > before[c], "ampacity rises with size");
            CHECK(c == 0 || is > before[c - 1], "ampacity rises with insulation temperature");
            before[c] = is;
        }
    CHECK(found >= 30, "the table has rows");
}

static void test_ampacity(void)
{
    double is;
    check_ampacity_file("ampacity_310_16.csv", "size_awg_kcmil", IN_RACEWAY, 2);
    check_ampacity_file("ampacity_310_17_partial.csv", "size_awg", IN_FREE_AIR, 1);
    check_ampacity_rises("copper", IN_RACEWAY);
    check_ampacity_rises("aluminum", IN_RACEWAY);
    check_ampacity_rises("copper", IN_FREE_AIR);
    CHECK(!ampacity_at(&is, "2000 kcmil", "copper", 75, IN_RACEWAY), "nothing past the table");
    CHECK(!ampacity_at(&is, "18 AWG", "copper", 75, IN_RACEWAY), "nothing before the table");
    CHECK(!ampacity_at(&is, "10 AWG", "copper", 80, IN_RACEWAY), "no column between columns");
    CHECK(!ampacity_at(&is, "10 AWG", "silver", 75, IN_RACEWAY), "no other metal");
    CHECK(!ampacity_at(&is, "10 AWG", "aluminum", 75, IN_FREE_AIR), "free air: copper only");
    CHECK(ampacity_is_from_memory("10 AWG", "copper", 75, IN_FREE_AIR), "a figure from memory");
    CHECK(!ampacity_is_from_memory("10 AWG", "copper", 75, IN_RACEWAY), "a sourced figure");
    CHECK(ampacity_is_from_memory("700 kcmil", "copper", 75, IN_RACEWAY) &&
              ampacity_is_from_memory("750 kcmil", "aluminum", 75, IN_RACEWAY) &&
              !ampacity_is_from_memory("600 kcmil", "aluminum", 75, IN_RACEWAY),
          "the last rows are from memory");
    CHECK(ampacity_at(&is, "750 kcmil", "copper", 75, IN_RACEWAY) && is == 475, "750 kcmil");
}

static void test_columns(void)
{
    int column = 0;
    CHECK(!ampacity_column(&column, 59.9), "below 60 °C there is no column");
    CHECK(ampacity_column(&column, 60) && column == 60, "60 °C");
    CHECK(ampacity_column(&column, 89) && column == 75, "89 °C has no more than the 75 °C column");
    CHECK(ampacity_column(&column, 150) && column == 90, "150 °C keeps to the 90 °C column");
}

/* 310.15(B): the factor is √((Tc − Ta) / (Tc − 30)); rows are rounded to two places at their upper
 * end (0.5 / 100, and a hair for the rounding itself). */
static void test_ambient_by_formula(void)
{
    struct csv csv;
    csv_read(&csv, "ambient_correction_310_15_B_1.csv");
    for (int c = 0; c < 3; c++) {
        double before = 2, is = 0;
        int found = 0;
        for (int row = 0; row < csv.rows; row++) {
            double to = csv_number(&csv, row, "ambient_C_to");
            char column[16];
            snprintf(column, sizeof column, "f_%dC", columns[c]);
            double should = csv_number(&csv, row, column);
            bool has = ampacity_ambient_factor(&is, to, columns[c]);
            CHECK(has == (should > 0), "a factor where the source has one");
            if (!has)
                continue;
            found++;
            CHECK_NEAR(is, should, 0, "factor as the source has it");
            CHECK_NEAR(is, sqrt((columns[c] - to) / (columns[c] - 30.0)), 0.0051,
                       "factor as the formula gives it");
            CHECK(is < before, "hotter carries less");
            before = is;
        }
        CHECK(found >= 10, "the column has rows");
    }
}

static void test_ambient_boundaries(void)
{
    double is = 0;
    CHECK(ampacity_ambient_factor(&is, 40, 90) && is == 0.91, "40 °C is on its row");
    CHECK(ampacity_ambient_factor(&is, 40.9, 90) && is == 0.87, "40.9 °C takes the hotter row");
    CHECK(ampacity_ambient_factor(&is, 41, 90) && is == 0.87, "41 °C");
    CHECK(ampacity_ambient_factor(&is, 62.9, 90) && is == 0.65, "62.9 °C");
    CHECK(ampacity_ambient_factor(&is, 68, 90) && is == 0.58, "68 °C");
    CHECK(ampacity_ambient_factor(&is, (104 - 32) * 5.0 / 9, 90) && is == 0.91, "104 °F is 40 °C");
    CHECK(ampacity_ambient_factor(&is, -20, 60) && is == 1.29, "the first row has no lower end");
    CHECK(!ampacity_ambient_factor(&is, 85.1, 90), "nothing above 85 °C");
    CHECK(!ampacity_ambient_factor(&is, 120, 90), "nothing at 120 °C");
    CHECK(!ampacity_ambient_factor(&is, 70.5, 75), "nothing above 70 °C at 75 °C");
    CHECK(!ampacity_ambient_factor(&is, 56, 60), "nothing above 55 °C at 60 °C");
    /* A factor on the 40 °C basis is no row of this table. */
    for (int t = -40; t <= 85; t++)
        CHECK(ampacity_ambient_factor(&is, t, 90) && is != 0.77, "0.77 belongs to a 40 °C basis");
}

static void test_counts(void)
{
    struct csv csv;
    csv_read(&csv, "ccc_adjustment_310_15_C_1.csv");
    double before = 2, is = 0;
    for (int row = 0; row < csv.rows; row++) {
        double from = csv_number(&csv, row, "ccc_from"), to = csv_number(&csv, row, "ccc_to");
        double should = csv_number(&csv, row, "factor");
        CHECK(ampacity_count_factor(&is, from) && is == should, "factor at the row's start");
        CHECK(ampacity_count_factor(&is, to > 0 ? to : 500) && is == should, "and at its end");
        CHECK(is < before, "more conductors carry less");
        before = is;
    }
    CHECK(!ampacity_count_factor(&is, 0), "no conductors, no factor");
}

static void test_rooftop(void)
{
    struct csv csv;
    csv_read(&csv, "rooftop_adder_310_15_B_2.csv");
    double is = 0;
    for (int row = 0; row < csv.rows; row++) {
        int edition = (int)csv_number(&csv, row, "edition");
        double limit = csv_number(&csv, row, "less_than_in");
        double adder = csv_number(&csv, row, "adder_C");
        CHECK(ampacity_rooftop_adder(&is, limit - 0.01, edition, NULL) && is == adder, "below");
        CHECK(ampacity_rooftop_adder(&is, limit, edition, NULL) && is == 0, "at the height: none");
        CHECK(ampacity_rooftop_adder(&is, 0, edition, "XHHW-2") && is == 0, "XHHW-2 is excepted");
        CHECK(ampacity_rooftop_adder(&is, 0, edition, "XHHW") && is == adder, "XHHW is not");
    }
    CHECK(ampacity_rooftop_adder(&is, 0.8, 2020, NULL) && is == 33, "0.8 in, 2020");
    CHECK(ampacity_rooftop_adder(&is, 0.8, 2023, NULL) && is == 0, "0.8 in, 2023");
    CHECK(!ampacity_rooftop_adder(&is, -1, 2023, NULL), "no height below the roof");
    CHECK(!ampacity_rooftop_adder(&is, 1, 2014, NULL), "no edition but the three");
}

static void test_cold(void)
{
    struct csv csv;
    csv_read(&csv, "voc_correction_690_7_A.csv");
    double before = 1, is = 0;
    bool is_memory = false;
    for (int row = 0; row < csv.rows; row++) {
        double from = csv_number(&csv, row, "T_C_from"), to = csv_number(&csv, row, "T_C_to");
        double should = csv_number(&csv, row, "factor");
        CHECK(cold_factor(&is, &is_memory, from) && is == should, "the row's warm end");
        CHECK(cold_factor(&is, &is_memory, to) && is == should, "the row's cold end");
        CHECK(is > before, "colder is higher");
        before = is;
        CHECK(is_memory == (strcmp(csv_cell(&csv, row, "status"), "from memory") == 0),
              "rows from memory are told");
        /* The Fahrenheit columns name the same row. */
        double cold_f = csv_number(&csv, row, "T_F_to");
        CHECK(cold_factor(&is, &is_memory, (cold_f - 32) * 5 / 9) && is == should, "in °F");
    }
    CHECK(cold_factor(&is, &is_memory, -0.5) && is == 1.12, "between rows: the colder");
    CHECK(!cold_factor(&is, &is_memory, -41), "nothing below -40 °C");
    CHECK(!cold_factor(&is, &is_memory, 25), "nothing above 24 °C");
}

static void test_ocpd_rows(void)
{
    static const int editions[] = {2017, 2020, 2023};
    struct csv csv;
    csv_read(&csv, "ocpd_240_6_A.csv");
    for (int row = 0; row < csv.rows; row++)
        for (int e = 0; e < 3; e++) {
            double rating = csv_number(&csv, row, "rating_A"), is = 0;
            bool is_fuse_only = strcmp(csv_cell(&csv, row, "kind"), "fuse only") == 0;
            bool is_breaker = !is_fuse_only && (rating != 10 || editions[e] == 2023);
            CHECK(ocpd_is_standard(rating, FUSE, editions[e]), "a standard fuse");
            CHECK(ocpd_is_standard(rating, CIRCUIT_BREAKER, editions[e]) == is_breaker,
                  "a standard breaker");
            CHECK(ocpd_next_up(&is, rating, FUSE, editions[e]) && is == rating, "itself, up");
            CHECK(ocpd_next_down(&is, rating, FUSE, editions[e]) && is == rating, "itself, down");
        }
}

static void test_ocpd_boundaries(void)
{
    double is = 0;
    CHECK(ocpd_next_up(&is, 8, CIRCUIT_BREAKER, 2023) && is == 10, "10 A breakers from 2023");
    CHECK(ocpd_next_up(&is, 8, CIRCUIT_BREAKER, 2020) && is == 15, "and not before");
    CHECK(ocpd_next_up(&is, 8, FUSE, 2017) && is == 10, "10 A fuses always");
    CHECK(ocpd_next_up(&is, 40.104, CIRCUIT_BREAKER, 2023) && is == 45, "40.104 A is not 40 A");
    CHECK(ocpd_next_up(&is, 40.0001, CIRCUIT_BREAKER, 2023) && is == 45, "nor is 40.0001 A");
    CHECK(ocpd_next_up(&is, 32 * 1.25, CIRCUIT_BREAKER, 2023) && is == 40, "125 % of 32 A is");
    CHECK(ocpd_next_up(&is, 0.1 * 3 / 0.3 * 40, CIRCUIT_BREAKER, 2023) && is == 40,
          "a rounding of the machine is no ampere");
    CHECK(ocpd_next_up(&is, 31.25, CIRCUIT_BREAKER, 2017) && is == 35, "35 A is a size");
    CHECK(!ocpd_next_up(&is, 6001, CIRCUIT_BREAKER, 2023), "nothing above 6000 A");
    CHECK(ocpd_next_down(&is, 59.9, CIRCUIT_BREAKER, 2023) && is == 50, "down");
    CHECK(!ocpd_next_down(&is, 14, CIRCUIT_BREAKER, 2020), "nothing below the smallest");
    CHECK(ocpd_next_up(&is, 601, CIRCUIT_BREAKER, 2020) && is == 700, "601 A is a fuse only");
    double before = 0;
    for (double a = 0.5; a < 6000; a *= 1.03) {
        CHECK(ocpd_next_up(&is, a, CIRCUIT_BREAKER, 2023) && is >= a && is >= before, "rises");
        before = is;
    }
}

static void test_small_conductors(void)
{
    struct csv csv;
    csv_read(&csv, "small_conductor_240_4_D.csv");
    for (int row = 0; row < csv.rows; row++)
        for (int edition = 2017; edition <= 2023; edition += 3) {
            const char *column = edition == 2023 ? "section_2023" : "section_2017_2020";
            const char *should = csv_cell(&csv, row, column),
                       *metal = csv_cell(&csv, row, "material");
            const char *material = strcmp(metal, "Cu") == 0           ? "copper"
                                   : strcmp(metal, "Cu-clad Al") == 0 ? "copper-clad aluminum"
                                                                      : "aluminum";
            double is = 0;
            const char *section = "";
            bool found = ocpd_small_conductor(
                &is, &section, size_of(csv_cell(&csv, row, "size_awg")), material, edition);
            CHECK(found == (should[0] != '\0'), "a cap where the edition has one");
            CHECK(!found || is == csv_number(&csv, row, "max_ocpd_A"), "the cap");
            CHECK_TEXT(section, should, "its item");
        }
    double is;
    const char *section;
    CHECK(!ocpd_small_conductor(&is, &section, "8 AWG", "copper", 2020), "8 AWG is not small");
}

/* R = ρ·L/A with ρ at 75 °C: copper 10.371 Ω·cmil/ft at 20 °C × (1 + 0.00393 × 55) = 12.6 (100 %
 * IACS), strands 2 % longer: 12.9; aluminum 17.0 × (1 + 0.00404 × 55) = 20.8, stranded 21.2. The
 * trade's constants, common practice, no source. */
static void test_dc_resistance(void)
{
    struct csv csv;
    csv_read(&csv, "ch9_table8_dc_resistance_75C.csv");
    double before[3] = {1e9, 1e9, 1e9};
    for (int row = 0; row < csv.rows; row++) {
        static const char *const names[] = {"cu_uncoated_ohm_per_kft", "cu_coated_ohm_per_kft",
                                            "al_ohm_per_kft"};
        static const double rho[] = {12.9, 12.9 * 1.04, 21.2};
        const char *size = size_of(csv_cell(&csv, row, "size"));
        double cmil = csv_number(&csv, row, "circular_mils"), kcmil = 0;
        CHECK(conductor_kcmil(&kcmil, size) && fabs(kcmil * 1000 - cmil) < 0.5, "circular mils");
        for (int i = 0; i < 3; i++) {
            double is = 0;
            CHECK(conductor_dc_resistance(&is, size, materials[i == 2], i == 1, STRANDED), size);
            CHECK_NEAR(is, csv_number(&csv, row, names[i]), 0, "resistance as the source has it");
            CHECK_NEAR(is * cmil / 1000, rho[i], 0.035 * rho[i], "resistance by resistivity");
            CHECK(is < before[i], "thicker resists less");
            before[i] = is;
        }
    }
    /* The rows from memory, by the same physics. */
    static const char *const large[] = {"600 kcmil", "700 kcmil", "750 kcmil"};
    for (int i = 0; i < 3; i++) {
        double copper = 0, coated = 0, aluminum = 0, kcmil = 0;
        CHECK(conductor_is_from_memory(large[i]) && conductor_kcmil(&kcmil, large[i]), large[i]);
        CHECK(conductor_dc_resistance(&copper, large[i], "copper", false, STRANDED) &&
                  conductor_dc_resistance(&coated, large[i], "copper", true, STRANDED) &&
                  conductor_dc_resistance(&aluminum, large[i], "aluminum", false, STRANDED),
              large[i]);
        CHECK_NEAR(copper * kcmil, 12.9, 0.1, "copper from memory by resistivity");
        CHECK(coated > copper && coated < 1.05 * copper, "tin adds a little");
        CHECK_NEAR(aluminum * kcmil, 21.2, 0.1, "aluminum from memory by resistivity");
        CHECK(copper < before[0] && coated < before[1] && aluminum < before[2], "resists less");
        before[0] = copper, before[1] = coated, before[2] = aluminum;
    }
    CHECK(!conductor_is_from_memory("500 kcmil"), "500 kcmil has a source");
    csv_read(&csv, "ch9_table8_solid_small.csv");
    for (int row = 0; row < csv.rows; row++) {
        const char *size = size_of(csv_cell(&csv, row, "size"));
        double is = 0, stranded = 0;
        CHECK(conductor_dc_resistance(&is, size, "copper", false, SOLID), size);
        CHECK_NEAR(is, csv_number(&csv, row, "cu_uncoated_ohm_per_kft"), 0, "solid copper");
        CHECK(conductor_dc_resistance(&stranded, size, "copper", false, STRANDED) && is < stranded,
              "solid resists less than stranded");
        CHECK(conductor_dc_resistance(&is, size, "aluminum", false, SOLID), size);
        CHECK_NEAR(is, csv_number(&csv, row, "al_ohm_per_kft"), 0, "solid aluminum");
    }
    double is;
    CHECK(!conductor_dc_resistance(&is, "6 AWG", "copper", false, SOLID), "6 AWG is not solid");
    CHECK(!conductor_dc_resistance(&is, "2000 kcmil", "copper", false, STRANDED), "no such row");
}

static void test_ac_impedance(void)
{
    struct csv csv;
    csv_read(&csv, "ch9_table9_ac_impedance.csv");
    static const char *const metals[] = {"pvc", "alcond", "steel"};
    double before[2][3] = {{1e9, 1e9, 1e9}, {1e9, 1e9, 1e9}};
    for (int row = 0; row < csv.rows; row++)
        for (int m = 0; m < 2; m++)
            for (int c = 0; c < 3; c++) {
                char column[24];
                snprintf(column, sizeof column, "R_%s_%s", short_materials[m], metals[c]);
                double should = csv_number(&csv, row, column), r = 0, x = 0, dc = 0;
                const char *size = size_of(csv_cell(&csv, row, "size"));
                bool found =
                    conductor_ac_impedance(&r, &x, size, materials[m], (enum raceway_metal)c);
                CHECK(found == (should > 0), "an impedance where the source has one");
                if (!found)
                    continue;
                CHECK_NEAR(r, should, 0, "resistance");
                CHECK_NEAR(x, csv_number(&csv, row, c == 2 ? "XL_steel" : "XL_pvc_al"), 0,
                           "reactance");
                CHECK(r <= before[m][c], "thicker resists no more");
                before[m][c] = r;
                CHECK(conductor_dc_resistance(&dc, size, materials[m], false, STRANDED), size);
                /* Two printed digits; the skin effect adds to 750 kcmil at most two fifths. */
                CHECK(r > 0.96 * dc && r < 1.41 * dc, "ac resistance beside dc resistance");
            }
}

static void test_dimensions(void)
{
    static const char *const names[] = {"THHN_THWN2", "XHHW2", "RHW2_nocover"};
    static const char *const insulations[] = {"THWN-2", "XHHW-2", "RHW-2"};
    struct csv csv;
    csv_read(&csv, "ch9_table5_insulated.csv");
    double before[3] = {0, 0, 0}, diameter = 0, area = 0;
    for (int row = 0; row < csv.rows; row++)
        for (int i = 0; i < 3; i++) {
            char column[40];
            const char *size = size_of(csv_cell(&csv, row, "size"));
            CHECK(conductor_dimensions(&diameter, &area, size, insulations[i]), size);
            snprintf(column, sizeof column, "%s_area_in2", names[i]);
            CHECK_NEAR(area, csv_number(&csv, row, column), 0, "area as the source has it");
            snprintf(column, sizeof column, "%s_diam_in", names[i]);
            CHECK_NEAR(diameter, csv_number(&csv, row, column), 0, "diameter");
            CHECK_NEAR(area, acos(-1) / 4 * diameter * diameter, 0.012 * area + 0.0001, "π/4·d²");
            CHECK(area > before[i], "thicker takes more room");
            before[i] = area;
        }
    double smaller = 0.7073;
    static const char *const large[] = {"600 kcmil", "700 kcmil", "750 kcmil"};
    for (int i = 0; i < 3; i++) { /* from memory */
        CHECK(conductor_dimensions(&diameter, &area, large[i], "THWN-2"), large[i]);
        CHECK(area > smaller, "larger fills more");
        smaller = area;
        CHECK_NEAR(area, 0.78539816 * diameter * diameter, 1e-4, "π/4 d²");
        CHECK(conductor_dimensions(&diameter, &area, large[i], "XHHW-2"), large[i]);
        CHECK_NEAR(area, 0.78539816 * diameter * diameter, 1e-4, "π/4 d²");
        CHECK(!conductor_dimensions(&diameter, &area, large[i], "RHW-2"), "RHW-2 ends before");
    }
    CHECK(!conductor_dimensions(&diameter, &area, "10 AWG", "PV wire"), "PV wire has no row");
}

static void check_raceway(const char *raceway, const char *name)
{
    static const char *const fills[] = {"one_wire_53", "two_wires_31", "over_two_40"};
    struct csv csv;
    csv_read(&csv, name);
    double before = 0, diameter = 0, area = 0;
    for (int row = 0; row < csv.rows; row++) {
        char size[16];
        snprintf(size, sizeof size, "%s in", csv_cell(&csv, row, "trade_size"));
        CHECK_TEXT(raceway_size_at(raceway, (size_t)row), size, "trade sizes in order");
        CHECK(raceway_inside(&diameter, &area, raceway, size), size);
        CHECK_NEAR(diameter, csv_number(&csv, row, "id_in"), 0, "diameter");
        CHECK_NEAR(area, csv_number(&csv, row, "area_100_in2"), 0, "area");
        CHECK_NEAR(area, acos(-1) / 4 * diameter * diameter, 0.0006, "π/4·d²");
        CHECK(area > before, "wider holds more");
        before = area;
        for (int i = 0; i < 3; i++) {
            double fill = 0, share = 0;
            CHECK(raceway_fill_area(&fill, raceway, size, i + 1), size);
            CHECK(raceway_fill_share(&share, i + 1, false), "a share");
            CHECK_NEAR(fill, csv_number(&csv, row, fills[i]), 0, "fill as the source has it");
            CHECK_NEAR(fill, share * area, 0.001, "fill is the share of the area");
        }
    }
    CHECK(raceway_size_at(raceway, (size_t)csv.rows) == NULL, "no size past the table");
    CHECK(!raceway_inside(&diameter, &area, raceway, "3/8 in"), "no 3/8 in row");
}

static void test_raceways(void)
{
    struct csv csv;
    double is = 0, area;
    check_raceway("EMT", "ch9_table4_emt.csv");
    check_raceway("RMC", "ch9_table4_rmc.csv");
    check_raceway("IMC", "ch9_table4_imc.csv");
    check_raceway("PVC 40", "ch9_table4_pvc40.csv");
    check_raceway("PVC 80", "ch9_table4_pvc80.csv");
    check_raceway("FMC", "ch9_table4_fmc.csv");
    check_raceway("LFMC", "ch9_table4_lfmc.csv");
    csv_read(&csv, "ch9_table1_fill.csv");
    for (int row = 0; row < csv.rows; row++) {
        int conductors = row < 2 ? row + 1 : 9;
        CHECK(raceway_fill_share(&is, conductors, row == 3), "a share");
        CHECK_NEAR(is * 100, csv_number(&csv, row, "max_fill_pct"), 1e-9, "the share");
    }
    CHECK(!raceway_fill_share(&is, 0, false), "no conductors, no share");
    CHECK(!raceway_inside(&is, &area, "LFNC", "1 in"), "no figures for another raceway");
}

static void test_grounding(void)
{
    struct csv csv;
    const char *size = NULL;
    csv_read(&csv, "egc_250_122.csv");
    double before[2] = {0, 0}, kcmil = 0;
    for (int row = 0; row < csv.rows; row++)
        for (int m = 0; m < 2; m++) {
            double ocpd = csv_number(&csv, row, "ocpd_A_not_exceeding");
            CHECK(conductor_egc(&size, ocpd, materials[m]), "an EGC");
            CHECK_TEXT(size, size_of(csv_cell(&csv, row, short_materials[m])), "as in 250.122");
            CHECK(conductor_kcmil(&kcmil, size) && kcmil >= before[m], "EGCs rise");
            before[m] = kcmil;
        }
    CHECK(conductor_egc(&size, 60.5, "copper") && strcmp(size, "8 AWG") == 0, "between rows: up");
    CHECK(!conductor_egc(&size, 6001, "copper") && !conductor_egc(&size, 0, "copper"), "outside");
    csv_read(&csv, "gec_250_66.csv");
    for (int row = 0; row + 1 < csv.rows; row++)
        for (int m = 0; m < 2; m++)
            for (int s = 0; s < 2; s++) {
                const char *most =
                    csv_cell(&csv, row, s == 0 ? "service_cu_max" : "service_al_max");
                CHECK(conductor_kcmil(&kcmil, size_of(most)), most);
                CHECK(conductor_gec(&size, kcmil, materials[s], materials[m]), "a GEC");
                CHECK_TEXT(size, size_of(csv_cell(&csv, row, m == 0 ? "gec_cu" : "gec_al")),
                           "as in 250.66");
            }
    CHECK(conductor_gec(&size, 1200, "copper", "copper") && strcmp(size, "3/0 AWG") == 0, "last");
}

/* 310.12: each size carries 83 % of the rating in its 75 °C column. */
static void test_dwelling(void)
{
    struct csv csv;
    csv_read(&csv, "dwelling_310_12.csv");
    for (int row = 0; row < csv.rows; row++)
        for (int m = 0; m < 2; m++) {
            double rating = csv_number(&csv, row, "rating_A"), amperes = 0;
            const char *size = NULL;
            CHECK(conductor_dwelling(&size, rating, materials[m]), "a size");
            CHECK_TEXT(size, size_of(csv_cell(&csv, row, short_materials[m])), "as in 310.12");
            CHECK(ampacity_at(&amperes, size, materials[m], 75, IN_RACEWAY), size);
            CHECK_NEAR(amperes,
                       csv_number(&csv, row, m == 0 ? "cu_75C_ampacity" : "al_75C_ampacity"), 0,
                       "its 75 °C column");
            CHECK(amperes >= 0.83 * rating, "it carries 83 % of the rating");
        }
    const char *size = NULL;
    CHECK(conductor_dwelling(&size, 180, "copper") && strcmp(size, "2/0 AWG") == 0, "between rows");
    CHECK(!conductor_dwelling(&size, 99, "copper") && !conductor_dwelling(&size, 401, "copper"),
          "outside the table");
}

static void test_working_space(void)
{
    struct csv csv;
    csv_read(&csv, "working_space_110_26_A_1.csv");
    double is = 0;
    for (int row = 0; row < csv.rows; row++)
        for (int condition = 1; condition <= 3; condition++) {
            char column[16];
            snprintf(column, sizeof column, "cond%d_ft", condition);
            double should = csv_number(&csv, row, column);
            double from = csv_number(&csv, row, "V_to_ground_from");
            double to = csv_number(&csv, row, "V_to_ground_to");
            CHECK(working_space_depth(&is, from, condition) && is == should, "at the row's start");
            CHECK(working_space_depth(&is, to, condition) && is == should, "and at its end");
        }
    CHECK(working_space_depth(&is, 150.5, 3) && is == 4, "between rows: the deeper");
    CHECK(!working_space_depth(&is, 1001, 1) && !working_space_depth(&is, 120, 4), "outside");
}

int main(void)
{
    test_sizes_are_the_vocabulary();
    test_ampacity();
    test_columns();
    test_ambient_by_formula();
    test_ambient_boundaries();
    test_counts();
    test_rooftop();
    test_cold();
    test_ocpd_rows();
    test_ocpd_boundaries();
    test_small_conductors();
    test_dc_resistance();
    test_ac_impedance();
    test_dimensions();
    test_raceways();
    test_grounding();
    test_dwelling();
    test_working_space();
    return checks_end();
}
