/**
 * Here live the cautions, each with its source, what the room does to a pour or a coat, and whether
 * a route makes sense. Everything here advises; nothing here refuses a book or changes a plan.
 */
package strickle.safety;
