package strickle.api;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * Where the service listens and by what names it answers.
 *
 * @param address the address or name of an interface of this machine
 * @param port 0 for a free one
 * @param names further host names it is called by, without a port
 * @param behindTls whether something in front of it speaks TLS, so that its pages are https pages
 * @param patience how long it waits for a request that does not go on, and for the whole of a body
 */
public record Listening(
    String address, int port, Set<String> names, boolean behindTls, Duration patience) {

  /** The address only this machine can reach. */
  public static final String LOOPBACK = "127.0.0.1";

  /** How long it waits when nothing else is said. */
  public static final Duration USUAL_PATIENCE = Duration.ofSeconds(30);

  /** Copies the names. */
  public Listening {
    names = Set.copyOf(names);
  }

  /** On this machine only. */
  public static Listening here(int port) {
    return new Listening(LOOPBACK, port, Set.of(), false, USUAL_PATIENCE);
  }

  /**
   * Whether it listens where only this machine can reach it.
   *
   * @throws Faulty when there is no such address
   */
  public boolean isLoopback() {
    try {
      return InetAddress.getByName(address).isLoopbackAddress();
    } catch (UnknownHostException none) {
      String right = "an address of this machine, such as " + LOOPBACK;
      throw new Faulty(List.of(new Fault("--address", '"' + address + '"', right)));
    }
  }

  /**
   * Whether nobody elsewhere is meant to reach it: it listens on this machine only, and neither a
   * further name nor TLS tells of something in front that lets others through.
   *
   * @throws Faulty when there is no such address
   */
  boolean isOnlyForThisMachine() {
    return isLoopback() && names.isEmpty() && !behindTls;
  }

  /** The option that lets others in, with what it says. */
  Fault lettingIn(String but, String right) {
    if (!isLoopback()) {
      return new Fault("--address", address + ", which others can reach, " + but, right);
    }
    return behindTls
        ? new Fault("--behind-tls", "something in front that lets others in, " + but, right)
        : new Fault("--name", names.iterator().next() + ", as others call it, " + but, right);
  }

  /** Who may ask, once the port is known. */
  HostGuard guard(int boundPort) {
    Set<String> all = new HashSet<>(names);
    all.add(address.contains(":") ? "[" + address + "]" : address);
    all.removeAll(Set.of("0.0.0.0", "[::]")); // every interface: by none of their names as yet
    return new HostGuard(boundPort, all, behindTls);
  }
}
