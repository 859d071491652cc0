/* Conductors: sizes, resistance and impedance (NEC Chapter 9 Tables 8 and 9), dimensions (Table 5),
 * equipment grounding (250.122) and grounding electrode conductors (250.66), dwelling services
 * (310.12). Secondary sources. */
#ifndef TABLES_CONDUCTOR_H
#define TABLES_CONDUCTOR_H
#include <stdbool.h>
#include <stddef.h>

#define SOURCE_DC_RESISTANCE "NEC Chapter 9 Table 8, secondary source"
#define SOURCE_AC_IMPEDANCE  "NEC Chapter 9 Table 9, secondary source"
#define SOURCE_DIMENSIONS    "NEC Chapter 9 Table 5, secondary source"
#define SOURCE_EGC           "NEC Table 250.122, secondary source"
#define SOURCE_GEC           "NEC Table 250.66, secondary source"
#define SOURCE_DWELLING      "NEC 310.12 (2017: 310.15(B)(7)), secondary source"

enum stranding { STRANDED, SOLID };
enum raceway_metal { NO_METAL, ALUMINUM_RACEWAY, STEEL_RACEWAY };

/* The sizes that the tables use, rising; NULL past the end. */
const char *conductor_size_at(size_t at);
/* Cross-section in kcmil: Table 8 for AWG, the name's own figure for kcmil. */
bool conductor_kcmil(double *kcmil, const char *size);
/* Are the size's figures in Tables 5 and 8 from memory (above 500 kcmil)? */
bool conductor_is_from_memory(const char *size);
/* Ohms per 1000 ft, dc at 75 °C. `is_coated` is tinned copper. Solid only to 8 AWG. */
bool conductor_dc_resistance(double *ohms, const char *size, const char *material, bool is_coated,
                             enum stranding stranding);
/* Ohms to neutral per 1000 ft, 60 Hz at 75 °C, three single conductors in a raceway. */
bool conductor_ac_impedance(double *resistance, double *reactance, const char *size,
                            const char *material, enum raceway_metal metal);
/* Approximate diameter in in and area in in². THHN, THWN and THWN-2 share figures, XHHW and XHHW-2
 * too; RHW-2 is without cover; USE-2 takes RHW-2's, being listed as both (from memory). PV wire and
 * trunk cable have none: their diameter is the maker's. */
bool conductor_dimensions(double *diameter, double *area, const char *size, const char *insulation);
/* The smallest equipment grounding conductor for a device of at most 6000 A. */
bool conductor_egc(const char **size, double ocpd_amperes, const char *material);
/* The grounding electrode conductor for the service conductors' total cross-section. */
bool conductor_gec(const char **size, double service_kcmil, const char *service_material,
                   const char *material);
/* The service conductor of a one-family dwelling of a rating of 100 to 400 A; a rating between rows
 * takes the larger row. */
bool conductor_dwelling(const char **size, double rating, const char *material);

#endif
