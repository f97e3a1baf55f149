/* Makes the n-th write, sync, truncation or renaming of a file in a folder fail, as a bad disk would.
   FAIL_UNDER names the folder, FAIL_AT is n, and nothing is counted unless the file FAIL_WHILE is
   there. When it has failed once, FAIL_ALSO=1 makes every later one fail too. How many there were is
   written to FAIL_COUNT. */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/types.h>
#include <unistd.h>

static int seen;

static int fails_at(const char *path) {
  const char *under = getenv("FAIL_UNDER"), *at = getenv("FAIL_AT"), *all = getenv("FAIL_ALSO");
  const char *only = getenv("FAIL_WHILE"), *count = getenv("FAIL_COUNT");
  if (!under || !at || !only || !count || strncmp(path, under, strlen(under))) return 0;
  if (access(only, F_OK)) return 0;
  int now = __sync_add_and_fetch(&seen, 1);
  FILE *file = fopen(count, "w");
  if (file) { fprintf(file, "%d\n", now); fclose(file); }
  int fail = now == atoi(at) || (all && now > atoi(at));
  if (fail) errno = EIO;
  return fail;
}

static int fails(int fd) {
  char link[64], path[4096];
  snprintf(link, sizeof link, "/proc/self/fd/%d", fd);
  ssize_t length = readlink(link, path, sizeof path - 1);
  if (length < 0) return 0;
  path[length] = 0;
  return fails_at(path);
}

#define REAL(name) ((__typeof__(&name))dlsym(RTLD_NEXT, #name))

ssize_t write(int fd, const void *b, size_t n) { return fails(fd) ? -1 : REAL(write)(fd, b, n); }
ssize_t pwrite(int fd, const void *b, size_t n, off_t o) {
  return fails(fd) ? -1 : REAL(pwrite)(fd, b, n, o);
}
ssize_t pwrite64(int fd, const void *b, size_t n, off64_t o) {
  return fails(fd) ? -1 : REAL(pwrite64)(fd, b, n, o);
}
int fsync(int fd) { return fails(fd) ? -1 : REAL(fsync)(fd); }
int fdatasync(int fd) { return fails(fd) ? -1 : REAL(fdatasync)(fd); }
int ftruncate(int fd, off_t n) { return fails(fd) ? -1 : REAL(ftruncate)(fd, n); }
int ftruncate64(int fd, off64_t n) { return fails(fd) ? -1 : REAL(ftruncate64)(fd, n); }
int rename(const char *a, const char *b) { return fails_at(b) ? -1 : REAL(rename)(a, b); }
int unlink(const char *a) { return fails_at(a) ? -1 : REAL(unlink)(a); }
