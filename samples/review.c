/* #region c-review */
/* Prints the review of the plan that is named behind the command, or what is wrong with it. */
#include <stdio.h>

#include "staging_core.h"

static int told(char *error) {
    fprintf(stderr, "%s\n", error ? error : "no memory is left");
    staging_text_free(error);
    return 1;
}

int main(int count, char **arguments) {
    staging_plan_handle plan;
    staging_review_handle review;
    char *text, *error;

    if (count != 2) {
        fprintf(stderr, "usage: review PLAN.json\n");
        return 2;
    }
    if (staging_plan_read(arguments[1], &plan, &error) != STAGING_OK)
        return told(error);
    staging_status status = staging_review(plan, 60, NULL, &review, &error); /* 60 cases of the odds */
    staging_release(plan);
    if (status != STAGING_OK)
        return told(error);
    status = staging_review_text(review, 100, &text, &error);
    staging_release(review);
    if (status != STAGING_OK)
        return told(error);
    puts(text);
    staging_text_free(text);
    return 0;
}
/* #endregion */
