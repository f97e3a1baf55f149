/* Makes the n-th reading, writing, opening, mapping, syncing, truncation, removal or renaming of a file
   below a folder fail, as a bad disk would. FAIL_UNDER names the folder. The file FAIL_WHILE holds n and
   whether every later one fails too ("12 0" or "12 1"); while it is not there nothing is counted, and
   other words in it begin the count anew. How many there were is written to FAIL_COUNT. */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/mman.h>
#include <sys/types.h>
#include <unistd.h>

static int seen;
static char asked[32];

/* The words in FAIL_WHILE; empty when it is not there. Asks the kernel itself, so as not to be counted. */
static void read_asked(char *words, size_t size) {
  const char *name = getenv("FAIL_WHILE");
  FILE *file = name ? fopen(name, "r") : NULL;
  words[0] = 0;
  if (!file) return;
  if (!fgets(words, size, file)) words[0] = 0;
  fclose(file);
}

static int fails_at(const char *path) {
  const char *under = getenv("FAIL_UNDER"), *count = getenv("FAIL_COUNT");
  if (!under || !count || strncmp(path, under, strlen(under))) return 0;
  char words[sizeof asked];
  read_asked(words, sizeof words);
  if (!words[0]) return 0;
  if (strcmp(words, asked)) { strcpy(asked, words); seen = 0; }
  int now = __sync_add_and_fetch(&seen, 1), at = 0, all = 0;
  sscanf(words, "%d %d", &at, &all);
  FILE *file = fopen(count, "w");
  if (file) { fprintf(file, "%d\n", now); fclose(file); }
  int fail = now == at || (all && now > at);
  if (fail) errno = EIO;
  return fail;
}

static int fails(int fd) {
  char link[64], path[4096];
  if (fd < 3) return 0;
  snprintf(link, sizeof link, "/proc/self/fd/%d", fd);
  ssize_t length = readlink(link, path, sizeof path - 1);
  if (length < 0) return 0;
  path[length] = 0;
  return fails_at(path);
}

#define REAL(name) ((__typeof__(&name))dlsym(RTLD_NEXT, #name))

ssize_t read(int fd, void *b, size_t n) { return fails(fd) ? -1 : REAL(read)(fd, b, n); }
ssize_t pread(int fd, void *b, size_t n, off_t o) {
  return fails(fd) ? -1 : REAL(pread)(fd, b, n, o);
}
ssize_t pread64(int fd, void *b, size_t n, off64_t o) {
  return fails(fd) ? -1 : REAL(pread64)(fd, b, n, o);
}
ssize_t write(int fd, const void *b, size_t n) { return fails(fd) ? -1 : REAL(write)(fd, b, n); }
ssize_t pwrite(int fd, const void *b, size_t n, off_t o) {
  return fails(fd) ? -1 : REAL(pwrite)(fd, b, n, o);
}
ssize_t pwrite64(int fd, const void *b, size_t n, off64_t o) {
  return fails(fd) ? -1 : REAL(pwrite64)(fd, b, n, o);
}
int open(const char *path, int flags, ...) {
  va_list rest;
  va_start(rest, flags);
  int mode = flags & (O_CREAT | O_TMPFILE) ? va_arg(rest, int) : 0;
  va_end(rest);
  return fails_at(path) ? -1 : REAL(open)(path, flags, mode);
}
int open64(const char *path, int flags, ...) {
  va_list rest;
  va_start(rest, flags);
  int mode = flags & (O_CREAT | O_TMPFILE) ? va_arg(rest, int) : 0;
  va_end(rest);
  return fails_at(path) ? -1 : REAL(open64)(path, flags, mode);
}
void *mmap(void *at, size_t n, int how, int flags, int fd, off_t o) {
  return fails(fd) ? MAP_FAILED : REAL(mmap)(at, n, how, flags, fd, o);
}
void *mmap64(void *at, size_t n, int how, int flags, int fd, off64_t o) {
  return fails(fd) ? MAP_FAILED : REAL(mmap64)(at, n, how, flags, fd, o);
}
int fsync(int fd) { return fails(fd) ? -1 : REAL(fsync)(fd); }
int fdatasync(int fd) { return fails(fd) ? -1 : REAL(fdatasync)(fd); }
int ftruncate(int fd, off_t n) { return fails(fd) ? -1 : REAL(ftruncate)(fd, n); }
int ftruncate64(int fd, off64_t n) { return fails(fd) ? -1 : REAL(ftruncate64)(fd, n); }
int rename(const char *a, const char *b) { return fails_at(b) ? -1 : REAL(rename)(a, b); }
int unlink(const char *a) { return fails_at(a) ? -1 : REAL(unlink)(a); }
