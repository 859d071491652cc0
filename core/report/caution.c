#include "report.h"

const char *report_caution(void)
{
    return "This report is an aid, not an approval. Local codes and the authority having "
           "jurisdiction decide, and may ask for more than any book here says. A licensed "
           "electrician, and where the structure is in question a licensed engineer, must answer "
           "for the design, the installation and its inspection. What is not listed here was not "
           "checked. DC conductors of an array are live whenever light falls on it.";
}
