package strickle.store;

import java.util.Optional;
import strickle.book.Book;
import strickle.plan.Plan;

/**
 * A plan to be laid out.
 *
 * @param asked what was asked
 * @param book the book as it was then
 * @param present the plan under way that is laid out anew; nothing for one from the start
 */
public record PlanJob(PlanAsked asked, Book book, Optional<Plan> present) {}
