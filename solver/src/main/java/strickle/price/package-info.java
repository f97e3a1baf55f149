/**
 * What a good piece costs and what to ask for it: material, labour, wear and overhead down to the
 * last line, and for every channel the net, the profit, the margin and the price for a margin.
 * Arithmetic is exact decimal; an amount is rounded once, by name, where it leaves the package.
 */
package strickle.price;
