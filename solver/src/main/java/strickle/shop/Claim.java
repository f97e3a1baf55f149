package strickle.shop;

/**
 * One element of the list that is searched.
 *
 * @param index its number among the claims of the shop
 */
public record Claim(int index) {}
