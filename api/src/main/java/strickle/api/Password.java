package strickle.api;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * What opens a studio, kept only as its Argon2id hash (RFC 9106) with 46 MiB, two passes and one
 * lane: the first of the settings that the OWASP Password Storage Cheat Sheet names as enough.
 */
public final class Password {

  /** Characters a password has at least. */
  public static final int SHORTEST = 10;

  /** Characters a password has at most. */
  public static final int LONGEST = 200;

  private static final int MEMORY_KIB = 47_104;
  private static final int PASSES = 2;
  private static final int LANES = 1;
  private static final int SALT_BYTES = 16;
  private static final int HASH_BYTES = 32;
  private static final Pattern PARTS =
      Pattern.compile(
          "\\$argon2id\\$v=19\\$m=([0-9]{1,7}),t=([0-9]{1,3}),p=([0-9]{1,2})"
              + "\\$([A-Za-z0-9+/]+)\\$([A-Za-z0-9+/]+)");

  private Password() {}

  /**
   * The hash to keep of a password, as text with its settings and its salt.
   *
   * @throws Faulty when it is shorter than {@value #SHORTEST} characters or longer than {@value
   *     #LONGEST}
   */
  public static String hash(String password) {
    int length = password.codePointCount(0, password.length());
    if (length < SHORTEST || length > LONGEST) {
      String right = "one of " + SHORTEST + " to " + LONGEST;
      throw new Faulty(List.of(new Fault("password", length + " characters", right)));
    }
    byte[] salt = new byte[SALT_BYTES];
    new SecureRandom().nextBytes(salt);
    byte[] hash = hash(password, salt, MEMORY_KIB, PASSES, LANES, HASH_BYTES);
    Base64.Encoder text = Base64.getEncoder().withoutPadding();
    return "$argon2id$v=19$m=%d,t=%d,p=%d$%s$%s"
        .formatted(MEMORY_KIB, PASSES, LANES, text.encodeToString(salt), text.encodeToString(hash));
  }

  /**
   * Whether a password is the one of a hash. Without a hash it takes as long and is not, so that
   * the time tells nobody whether there is a studio of some name.
   */
  static boolean isRight(String password, Optional<String> hash) {
    Optional<Matcher> parts = hash.map(PARTS::matcher).filter(Matcher::matches);
    if (parts.isEmpty()) {
      hash(password, new byte[SALT_BYTES], MEMORY_KIB, PASSES, LANES, HASH_BYTES);
      return false;
    }
    Matcher part = parts.get();
    byte[] kept = Base64.getDecoder().decode(part.group(5));
    byte[] given =
        hash(
            password,
            Base64.getDecoder().decode(part.group(4)),
            Integer.parseInt(part.group(1)),
            Integer.parseInt(part.group(2)),
            Integer.parseInt(part.group(3)),
            kept.length);
    return MessageDigest.isEqual(kept, given);
  }

  /** Argon2id, version 1.3 (RFC 9106). */
  static byte[] hash(
      String password, byte[] salt, int memoryKib, int passes, int lanes, int bytes) {
    Argon2BytesGenerator generator = new Argon2BytesGenerator();
    generator.init(
        new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
            .withVersion(Argon2Parameters.ARGON2_VERSION_13)
            .withSalt(salt)
            .withMemoryAsKB(memoryKib)
            .withIterations(passes)
            .withParallelism(lanes)
            .build());
    byte[] hash = new byte[bytes];
    generator.generateBytes(password.getBytes(StandardCharsets.UTF_8), hash);
    return hash;
  }
}
