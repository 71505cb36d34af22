/*
 * Staging.Core for programs in other languages: a plan of a multistage model rocket in, its review and its odds out.
 * A computed margin is no permission to fly: local codes, the range safety officer and licensed practice decide.
 *
 * Results   Every call that can fail returns a staging_status, STAGING_OK being 0, and takes a place for the text of the
 *           error as its last argument. The text names the key or line, the value, its unit and its range. The place is
 *           set to NULL when all went well, and may itself be NULL when the text is not wanted. The other places are
 *           cleared before anything is computed. No exception crosses, and no number that is not finite.
 * Texts     go in and come out as UTF-8 that ends with a zero. What goes in stays the caller's and is not kept. What
 *           comes out through a char ** belongs to the caller, who frees it with staging_text_free, errors too.
 * Handles   are numbers in the guise of pointers, never addresses. The caller releases each with staging_release.
 *           One that was released, made up or mixed up gives STAGING_BAD_HANDLE. Nothing that was made from a handle
 *           needs it any longer: a review outlives the plan it was made from.
 * Threads   Every call may be made from any thread, several at once, on the same handles too; plans, reviews, odds and
 *           tables never change. A handle may be released while another thread works with it: that call ends as it would.
 *           The study of odds works on threads of its own. The same input gives the same bits on any number of threads.
 * Processes The library starts threads and cannot be unloaded. After fork() use it in one of the two processes only, and
 *           in the child only when the parent had not called it before.
 * Units     SI throughout. A number has its unit in its name, and a column tells its own; "-" is a share or a ratio.
 * Versions  staging_version() is that of the library. STAGING_ABI_VERSION rises when something in this file changes or
 *           goes, not when something is added: compare it with staging_abi_version() before the first call.
 */
#ifndef STAGING_CORE_H
#define STAGING_CORE_H

#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

#define STAGING_ABI_VERSION 1

typedef int32_t staging_status;
enum {
    STAGING_OK = 0,
    STAGING_BAD_PLAN = 1,     /* the text is not a plan, or the file cannot be read */
    STAGING_BAD_MODEL = 2,    /* the values are each valid, but do not hang together; each finding has a code */
    STAGING_BAD_ARGUMENT = 3, /* an argument is outside its range, or NULL where something is needed */
    STAGING_BAD_HANDLE = 4,   /* a handle was released, is of another kind, or never was one */
    STAGING_STOPPED = 5,      /* the caller asked to stop */
    STAGING_NO_MEMORY = 6,
    STAGING_FAULT = 7         /* a fault of the library: please tell */
};

typedef int32_t staging_verdict;
enum {
    STAGING_LIGHTS = 0,    /* every stage lights in every case tried, and the share is above 0.9 at 95 % */
    STAGING_MAY_LIGHT = 1, /* in some cases over what is judged, a stage stays cold */
    STAGING_STAYS_COLD = 2 /* a stage lights in no case tried */
};

typedef struct staging_plan_object *staging_plan_handle;
typedef struct staging_review_object *staging_review_handle;
typedef struct staging_odds_object *staging_odds_handle;
typedef struct staging_table_object *staging_table_handle;
typedef struct staging_stop_object *staging_stop_handle;

/* Told how many cases are done, in order, on the thread of the call; another answer than 0 stops the study. It must
 * return: no exception, no longjmp. It may call any function of this file. */
typedef int32_t (*staging_progress)(int64_t done, int64_t total, void *user);

/* The version, as "1.2.3"; never freed. */
const char *staging_version(void);
int32_t staging_abi_version(void);

/* Frees a text that came out; NULL is allowed. */
void staging_text_free(char *text);

/* Lets go of a handle of any kind; NULL is allowed. */
staging_status staging_release(void *handle);

/* How many handles are not released yet: to find leaks. */
int64_t staging_handles_held(void);

/* A wish to stop that other threads can utter; NULL wherever one is taken, if there is none. Once asked, it stays: every
 * call that it is given to ends with STAGING_STOPPED. */
staging_status staging_stop_create(staging_stop_handle *stop, char **error);
staging_status staging_stop(staging_stop_handle stop, char **error);

/* A plan from its text, which may name no file; and from a file, beside or below which its thrust histories are. */
staging_status staging_plan_parse(const char *text, staging_plan_handle *plan, char **error);
staging_status staging_plan_read(const char *path, staging_plan_handle *plan, char **error);

/* The plan as text in full, thrust histories included: staging_plan_parse makes an equal plan of it. */
staging_status staging_plan_json(staging_plan_handle plan, char **json, char **error);

/* Flies and judges a plan. cases: of the quick study of the odds, 0 for none, to 1 000 000; 60 is usual. */
staging_status staging_review(staging_plan_handle plan, int32_t cases, staging_stop_handle stop, staging_review_handle *review,
                              char **error);
staging_status staging_review_verdict(staging_review_handle review, staging_verdict *verdict, char **error);

/* SI numbers with the unit in the key, null where something did not happen. */
staging_status staging_review_json(staging_review_handle review, char **json, char **error);

/* The review to read, in lines of 92 to 1000 characters. */
staging_status staging_review_text(staging_review_handle review, int32_t width, char **text, char **error);

/* From the text of a plan to the JSON of its review in one call. */
staging_status staging_review_plan_text(const char *text, int32_t cases, char **json, char **error);

/* The course of one gap, counted from 0 in the order of "gaps" in the JSON. step_s: 1e-9 to 10 s, and at least a millionth
 * of the run. */
staging_status staging_gap_table(staging_review_handle review, int32_t gap, double step_s, staging_table_handle *table, char **error);

/* The flight of one body, counted from 0 in the order of "bodies" in the JSON. step_s: 1e-6 to 1000 s, and at least a
 * millionth of the flight. A jump has two rows at the same time. A booster that is left standing on the guide has none:
 * STAGING_BAD_ARGUMENT. */
staging_status staging_flight_table(staging_review_handle review, int32_t body, double step_s, staging_table_handle *table,
                                    char **error);

/* How often every stage lights when what is judged is uncertain. cases: 1 to 1 000 000, 400 is usual. seed: the same one
 * gives the same cases. threads: 1 to 1024, 0 lets the library choose. progress, and user which is handed to it, may be
 * NULL. */
staging_status staging_odds(staging_plan_handle plan, int32_t cases, uint64_t seed, int32_t threads, staging_progress progress,
                            void *user, staging_stop_handle stop, staging_odds_handle *odds, char **error);

/* The share of the cases in which every stage lights, and where the true one lies at 95 %. */
staging_status staging_odds_share(staging_odds_handle odds, double *share, double *least, double *greatest, char **error);
staging_status staging_odds_json(staging_odds_handle odds, char **json, char **error);
staging_status staging_odds_text(staging_odds_handle odds, char **text, char **error);

/* A row a case: the inputs that were drawn, then what came of them. */
staging_status staging_odds_table(staging_odds_handle odds, staging_table_handle *table, char **error);

staging_status staging_table_size(staging_table_handle table, int32_t *rows, int32_t *columns, char **error);
staging_status staging_table_heading(staging_table_handle table, int32_t column, char **name, char **unit, char **error);

/* Copies a column to memory of the caller, which has room for capacity numbers, at least as many as there are rows.
 * present, of the same room, tells with 1 where a number is and with 0 where there is none, the number then being 0; it may
 * be NULL if all are there. */
staging_status staging_table_column(staging_table_handle table, int32_t column, int32_t capacity, double *values, uint8_t *present,
                                    char **error);

#ifdef __cplusplus
}
#endif

#endif
