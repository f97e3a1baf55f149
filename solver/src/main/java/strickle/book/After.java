package strickle.book;

import java.util.OptionalDouble;

/** The wait before a step. JSON "wait" is {@code kind}: Java forbids a component named wait. */
public record After(WaitKind kind, double hours, OptionalDouble atMostHours) {}
