package strickle.api;

import java.util.List;

/** Where a request comes from, as far as it says who asks. */
final class Network {

  private static final int HALF = 4;

  private Network() {}

  /** Of an address: whoever has one of IPv6 has all with the same first half. */
  static String of(String address) {
    String[] groups = address.split(":", -1);
    return groups.length <= HALF ? address : String.join(":", List.of(groups).subList(0, HALF));
  }
}
