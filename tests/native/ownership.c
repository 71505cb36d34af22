/* Who owns what, under memcheck: each text that comes out is freed once, a text that goes in is not kept, columns stay within the
 * memory of the caller, and a released handle is refused by every call. Ends with 0 when all is as expected; memcheck sees the rest.
 * Argument: the file of a plan that is soon reviewed. */
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <valgrind/memcheck.h>

#include "staging_core.h"

#define EXPECT(what) do { if (!(what)) { fprintf(stderr, "line %d: not so: %s\n", __LINE__, #what); exit(1); } } while (0)
#define FREED(call) do { EXPECT((call) == STAGING_OK && text && *text); staging_text_free(text); } while (0)
#define REFUSED(call) do { EXPECT((call) == STAGING_BAD_HANDLE && strstr(text, "released")); staging_text_free(text); } while (0)

static char *text, *other;

static void table_is_copied(staging_table_handle table) {
    int32_t rows, columns;
    EXPECT(staging_table_size(table, &rows, &columns, NULL) == STAGING_OK && rows > 0 && columns > 0);
    double *values = malloc((size_t)rows * sizeof *values);
    uint8_t *present = malloc((size_t)rows);
    for (int32_t column = 0; column < columns; column++) {
        EXPECT(staging_table_heading(table, column, &text, &other, NULL) == STAGING_OK && *text && *other);
        staging_text_free(text), staging_text_free(other);
        EXPECT(staging_table_column(table, column, rows, values, present, NULL) == STAGING_OK);
        for (int32_t row = 0; row < rows; row++)
            EXPECT(present[row] <= 1 && values[row] - values[row] == 0); /* memcheck: every one was written */
    }
    EXPECT(staging_table_heading(table, columns, &text, &other, NULL) == STAGING_BAD_ARGUMENT && !text && !other);
    EXPECT(staging_table_column(table, 0, rows - 1, values, present, &text) == STAGING_BAD_ARGUMENT);
    staging_text_free(text);
    EXPECT(staging_release(table) == STAGING_OK);
    REFUSED(staging_table_size(table, &rows, &columns, &text));
    REFUSED(staging_table_heading(table, 0, &other, &other, &text));
    REFUSED(staging_table_column(table, 0, rows, values, present, &text));
    free(values), free(present);
}

static void odds_are_let_go(staging_plan_handle plan) {
    staging_odds_handle odds;
    staging_table_handle table;
    double a, b, c;
    EXPECT(staging_odds(plan, 2, 7, 1, NULL, NULL, NULL, &odds, NULL) == STAGING_OK);
    FREED(staging_odds_json(odds, &text, NULL));
    FREED(staging_odds_text(odds, &text, NULL));
    EXPECT(staging_odds_table(odds, &table, NULL) == STAGING_OK && staging_release(odds) == STAGING_OK);
    table_is_copied(table);
    REFUSED(staging_odds_share(odds, &a, &b, &c, &text));
    REFUSED(staging_odds_json(odds, &other, &text));
    REFUSED(staging_odds_text(odds, &other, &text));
    REFUSED(staging_odds_table(odds, &table, &text));
    EXPECT(table == NULL);
}

static void review_is_let_go(staging_plan_handle plan) {
    staging_review_handle review;
    staging_table_handle gap, flight;
    staging_verdict verdict;
    EXPECT(staging_review(plan, 2, NULL, &review, NULL) == STAGING_OK);
    FREED(staging_review_json(review, &text, NULL));
    FREED(staging_review_text(review, 92, &text, NULL));
    EXPECT(staging_gap_table(review, 0, 1e-3, &gap, NULL) == STAGING_OK && staging_flight_table(review, 0, 0.1, &flight, NULL) == STAGING_OK);
    EXPECT(staging_release(review) == STAGING_OK);
    table_is_copied(gap), table_is_copied(flight); /* they outlive what they came from */
    REFUSED(staging_review_verdict(review, &verdict, &text));
    REFUSED(staging_review_json(review, &other, &text));
    REFUSED(staging_review_text(review, 92, &other, &text));
    REFUSED(staging_gap_table(review, 0, 1e-3, &gap, &text));
    REFUSED(staging_flight_table(review, 0, 0.1, &flight, &text));
}

static void plan_is_let_go(const char *file) {
    staging_plan_handle plan;
    staging_review_handle review;
    staging_odds_handle odds;
    staging_stop_handle stop;
    char *whole;
    EXPECT(staging_plan_read(file, &plan, NULL) == STAGING_OK && staging_plan_json(plan, &whole, NULL) == STAGING_OK);
    FREED(staging_review_plan_text(whole, 0, &text, NULL));
    EXPECT(staging_release(plan) == STAGING_OK && staging_plan_parse(whole, &plan, NULL) == STAGING_OK);
    staging_text_free(whole); /* what goes in is not kept */
    review_is_let_go(plan), odds_are_let_go(plan);
    EXPECT(staging_stop_create(&stop, NULL) == STAGING_OK && staging_stop(stop, NULL) == STAGING_OK);
    EXPECT(staging_review(plan, 0, stop, &review, &text) == STAGING_STOPPED && review == NULL);
    staging_text_free(text);
    EXPECT(staging_release(stop) == STAGING_OK);
    REFUSED(staging_stop(stop, &text));
    REFUSED(staging_review(plan, 0, stop, &review, &text));
    EXPECT(staging_release(plan) == STAGING_OK && staging_release(plan) == STAGING_BAD_HANDLE);
    REFUSED(staging_plan_json(plan, &other, &text));
    REFUSED(staging_review(plan, 0, NULL, &review, &text));
    REFUSED(staging_odds(plan, 2, 7, 1, NULL, NULL, NULL, &odds, &text));
    EXPECT(staging_plan_read("nowhere.json", &plan, &text) == STAGING_BAD_PLAN);
    staging_text_free(text), staging_text_free(NULL);
    EXPECT(staging_handles_held() == 0);
}

static unsigned long lost(void) {
    unsigned long definitely, possibly, reachable, suppressed;
    text = other = NULL;
    VALGRIND_DO_LEAK_CHECK;
    VALGRIND_COUNT_LEAKS(definitely, possibly, reachable, suppressed);
    (void)possibly, (void)reachable, (void)suppressed;
    return definitely;
}

/* Forgets a text, and gives where it is in a guise that memcheck does not know. */
static uintptr_t forgotten(size_t *size) {
    staging_plan_handle plan;
    EXPECT(staging_plan_parse("{", &plan, &text) == STAGING_BAD_PLAN);
    uintptr_t hidden = ~(uintptr_t)text;
    *size = strlen(text) + 1;
    EXPECT(staging_plan_parse("[", &plan, &text) == STAGING_BAD_PLAN); /* over what the first call left on the stack */
    staging_text_free(text);
    return hidden;
}

int main(int count, char **arguments) {
    size_t size;
    EXPECT(count == 2 && RUNNING_ON_VALGRIND);
    plan_is_let_go(arguments[1]);
    EXPECT(lost() == 0);
    uintptr_t hidden = forgotten(&size);
    EXPECT(lost() == size); /* the check can fail */
    staging_text_free((char *)~hidden);
    EXPECT(lost() == 0);
    printf("native library %s: every text freed once, no handle used after its release\n", staging_version());
    return 0;
}
