/* One process, one question, to be timed from outside: start PLAN plan|review|odds CASES. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "staging_core.h"

static char *error;

static void must(staging_status status) {
    if (status == STAGING_OK)
        return;
    fprintf(stderr, "%s\n", error ? error : "no memory is left");
    exit(1);
}

int main(int count, char **arguments) {
    staging_plan_handle plan;
    staging_review_handle review;
    staging_odds_handle odds;
    if (count != 4) {
        fprintf(stderr, "usage: start PLAN plan|review|odds CASES\n");
        return 2;
    }
    int32_t cases = atoi(arguments[3]);
    must(staging_plan_read(arguments[1], &plan, &error));
    if (!strcmp(arguments[2], "review"))
        must(staging_review(plan, cases, NULL, &review, &error));
    if (!strcmp(arguments[2], "odds"))
        must(staging_odds(plan, cases, 7, 1, NULL, NULL, NULL, &odds, &error));
    return 0;
}
