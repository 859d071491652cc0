/* One fastener in wood: withdrawal, thread. */
#include "timber.h"

#include <math.h>

/* NDS Table 11.3.4 (from memory): connections kept hot. Up to 100 °F nothing is lost. */
double timber_temperature_factor(const struct timber_service *service)
{
    if (isnan(service->temperature) || service->temperature <= 100)
        return 1;
    if (service->temperature <= 125)
        return service->is_wet ? 0.7 : 0.8;
    return service->is_wet ? 0.5 : 0.7;
}

/* NDS Table 11.3.3 (from memory): dowel-type fasteners other than nails in wood that is wet. */
double timber_wet_factor(const struct timber_service *service)
{
    return service->is_wet ? 0.7 : 1;
}

static const char *const factors_source =
    "NDS Table 11.3.1; CD Table 2.3.2; CM and Ct Tables 11.3.3 and 11.3.4 from memory";

static void refer(struct timber_withdrawal *withdrawal, struct working *working)
{
    double g = withdrawal->gravity, d = withdrawal->diameter;
    if (withdrawal->fastener == TIMBER_LAG) {
        withdrawal->reference = 1800 * pow(g, 1.5) * pow(d, 0.75);
        withdrawal->least = 4 * d;
        working_step(working, "NDS 12.2.1, Table 12.2A (older editions 11.2A)",
                     "W = 1800 G^1.5 D^0.75 = 1800 × %.4g^1.5 × %.4g^0.75 = %.4g lbf/in", g, d,
                     withdrawal->reference);
    } else {
        withdrawal->reference = 2850 * g * g * d;
        withdrawal->least = 6 * d;
        working_step(working, "NDS 12.2.2 (secondary source; section number from memory)",
                     "W = 2850 G² D = 2850 × %.4g² × %.4g = %.4g lbf/in", g, d,
                     withdrawal->reference);
    }
}

bool timber_withdraw(struct timber_withdrawal *withdrawal, struct working *working)
{
    const struct timber_service *service = &withdrawal->service;
    double wet = timber_wet_factor(service), hot = timber_temperature_factor(service);
    double end = withdrawal->is_end_grain ? 0.75 : 1;
    if (withdrawal->is_end_grain && withdrawal->fastener == TIMBER_WOOD_SCREW)
        return working_beyond(working, "a wood screw has no withdrawal value in end grain");
    refer(withdrawal, working);
    withdrawal->adjusted = withdrawal->reference * service->duration->factor * wet * hot * end;
    working_step(working, factors_source,
                 "W' = W CD CM Ct Ceg = %.4g × %.4g × %.4g × %.4g × %.4g = %.5g lbf/in",
                 withdrawal->reference, service->duration->factor, wet, hot, end,
                 withdrawal->adjusted);
    if (number_compare(withdrawal->penetration, withdrawal->least) < 0) {
        withdrawal->capacity = 0;
        working_step(working,
                     withdrawal->fastener == TIMBER_LAG ? "NDS 12.1.4 (4 D; secondary source)"
                                                        : "NDS 12.1.5 (6 D; from memory)",
                     "%.4g in of thread is less than the least that counts, %s D = %.4g in: no "
                     "withdrawal capacity",
                     withdrawal->penetration, withdrawal->fastener == TIMBER_LAG ? "4" : "6",
                     withdrawal->least);
        return true;
    }
    withdrawal->capacity = withdrawal->adjusted * withdrawal->penetration;
    working_step(working, NULL, "W' × thread = %.5g lbf/in × %.5g in = %.5g lbf per fastener",
                 withdrawal->adjusted, withdrawal->penetration, withdrawal->capacity);
    return true;
}

/* Thread and tip by the fastener's proportions, where they are not given. */
static bool take_proportions(struct timber_thread *thread, struct working *working)
{
    const struct wood_lag *lag = wood_lag_find(thread->diameter);
    bool is_lag = thread->fastener == TIMBER_LAG;
    if (thread->is_other && (isnan(thread->thread) || isnan(thread->tip)))
        return working_beyond(working, "the thread of this fastener follows no standard: give "
                                       "thread_length and tip_length from its maker");
    if (isnan(thread->thread)) {
        double length = thread->length;
        thread->thread = is_lag ? fmin(fmin(length / 2 + 0.5, 6), length) : length * 2 / 3;
        working_step(working,
                     is_lag ? "ASME B18.2.1 hex lag screws (secondary source)"
                            : "NDS Appendix L3 (two thirds of the length; from memory)",
                     is_lag ? "thread with tip T = %.4g/2 + 0.5 in, at most 6 in = %.5g in"
                            : "thread with tip = 2/3 × %.4g in = %.5g in",
                     length, thread->thread);
    }
    if (!isnan(thread->tip))
        return true;
    if (is_lag && lag == NULL)
        return working_beyond(working,
                              "no tip length is in the table for a %.4g in lag screw: give "
                              "tip_length",
                              thread->diameter);
    thread->tip = is_lag ? lag->tip : 2 * thread->diameter;
    working_step(working, is_lag ? lag->source : "NDS 12.1.5 (tip of 2 D; from memory)",
                 "tip E = %.5g in, not counted", thread->tip);
    return true;
}

bool timber_thread_take(struct timber_thread *thread, struct working *working)
{
    if (!take_proportions(thread, working))
        return false;
    /* Measured from below the head. */
    double from = fmax(thread->length - thread->thread, thread->above);
    double to = thread->length - thread->tip;
    if (!isnan(thread->member))
        to = fmin(to, thread->above + thread->member);
    thread->penetration = fmax(to - from, 0);
    working_step(working, NULL,
                 "of %.5g in below the head the member begins at %.5g in, the thread at %.5g in: "
                 "thread in the member, tip left out = %.5g in",
                 thread->length, thread->above, thread->length - thread->thread,
                 thread->penetration);
    return true;
}
