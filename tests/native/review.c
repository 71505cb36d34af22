/* Reviews an invented plan and asks for its odds, from two threads at once. Ends with 0 when all is as expected.
 * Arguments: the file of a plan that may light, and the version that the library should have. */
#include <pthread.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "staging_core.h"

#define EXPECT(what) do { if (!(what)) { fprintf(stderr, "line %d: not so: %s\n", __LINE__, #what); exit(1); } } while (0)

static int64_t done_last;

static int32_t told(int64_t done, int64_t total, void *user) {
    EXPECT(done > done_last && done <= total);
    done_last = done;
    return done >= *(int64_t *)user; /* other than 0: stop */
}

static void *json_of(void *plan) {
    staging_review_handle review;
    char *json, *error;
    if (staging_review(plan, 60, NULL, &review, &error) != STAGING_OK) {
        fprintf(stderr, "%s\n", error);
        staging_text_free(error);
        return NULL;
    }
    staging_review_json(review, &json, NULL);
    staging_release(review);
    return json;
}

static void odds_of(staging_plan_handle plan) {
    staging_odds_handle odds;
    double share, least, greatest;
    char *error;
    int64_t never = INT64_MAX, soon = 1;
    EXPECT(staging_odds(plan, 40, 7, 0, told, &never, NULL, &odds, NULL) == STAGING_OK && done_last == 40);
    EXPECT(staging_odds_share(odds, &share, &least, &greatest, NULL) == STAGING_OK);
    EXPECT(0 < least && least < share && share < greatest && greatest < 1);
    EXPECT(staging_release(odds) == STAGING_OK && staging_release(odds) == STAGING_BAD_HANDLE);
    done_last = 0;
    EXPECT(staging_odds(plan, 100000, 7, 0, told, &soon, NULL, &odds, &error) == STAGING_STOPPED && odds == NULL && done_last < 100000);
    staging_text_free(error);
}

static void columns_of(staging_plan_handle plan) {
    staging_review_handle review;
    staging_table_handle table;
    char *name, *unit;
    int32_t rows, columns;
    EXPECT(staging_review(plan, 0, NULL, &review, NULL) == STAGING_OK);
    EXPECT(staging_gap_table(review, 0, 1e-4, &table, NULL) == STAGING_OK && staging_release(review) == STAGING_OK);
    EXPECT(staging_table_size(table, &rows, &columns, NULL) == STAGING_OK && rows > 10 && columns == 12);
    EXPECT(staging_table_heading(table, 1, &name, &unit, NULL) == STAGING_OK && !strcmp(name, "gapPressure") && !strcmp(unit, "Pa"));
    double *pressure = malloc(rows * sizeof *pressure);
    EXPECT(staging_table_column(table, 1, rows - 1, pressure, NULL, NULL) == STAGING_BAD_ARGUMENT);
    EXPECT(staging_table_column(table, 1, rows, pressure, NULL, NULL) == STAGING_OK && pressure[0] > 9e4 && pressure[rows - 1] < 1e6);
    free(pressure), staging_text_free(name), staging_text_free(unit), staging_release(table);
}

int main(int count, char **arguments) {
    staging_plan_handle plan;
    pthread_t other;
    void *theirs;
    char *error;
    EXPECT(count == 3 && staging_abi_version() == STAGING_ABI_VERSION && !strcmp(staging_version(), arguments[2]));
    EXPECT(staging_plan_parse("{\n  \"planVersion\": 1,\n  \"nam\": 5\n}", &plan, &error) == STAGING_BAD_PLAN && plan == NULL);
    EXPECT(strstr(error, "$.nam") && strstr(error, "$.flight"));
    staging_text_free(error);
    EXPECT(staging_plan_read(arguments[1], &plan, NULL) == STAGING_OK);
    EXPECT(pthread_create(&other, NULL, json_of, plan) == 0);
    char *ours = json_of(plan);
    EXPECT(pthread_join(other, &theirs) == 0 && ours && theirs && !strcmp(ours, theirs) && strstr(ours, "\"answer\": \"mayLight\""));
    staging_text_free(ours), staging_text_free(theirs);
    odds_of(plan), columns_of(plan);
    EXPECT(staging_release(plan) == STAGING_OK && staging_handles_held() == 0);
    printf("native library %s: all as expected\n", staging_version());
    return 0;
}
