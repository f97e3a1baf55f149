/**
 * How many of each piece to bring to a fair: what each further one is worth under uncertain demand,
 * the best build that forms, hours, materials and money allow, and the plan that has it ready.
 * Expected money is worked out in double, as chances are, and rounded where it leaves the package.
 */
package strickle.price.fair;
