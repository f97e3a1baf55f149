package strickle.price.fair;

import strickle.book.Book;
import strickle.plan.Plan;

/**
 * A build with what goes with it.
 *
 * @param build what to bring
 * @param book the book with the build as orders, in place of what was to be brought so far
 * @param plan the plan of that book; it has passed no audit yet
 */
public record FairAnswer(FairBuild build, Book book, Plan plan) {}
