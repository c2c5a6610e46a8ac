package packetwright.paper.quiz;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Numbers drawn by lot, the same on every machine: SHA-256 (FIPS 180-4) of a seed and a counter,
 * the seed being the SHA-256 of what the draw is for.
 */
final class Draws {
  private final MessageDigest sha256;
  private final byte[] seed;
  private long counter;

  private Draws(MessageDigest sha256, byte[] seed) {
    this.sha256 = sha256;
    this.seed = seed;
  }

  /**
   * Draws for a purpose; each text counts with its length, so that no two purposes run together.
   */
  static Draws of(List<String> purpose) {
    MessageDigest sha256 = sha256();
    for (String text : purpose) {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      sha256.update(ByteBuffer.allocate(Integer.BYTES).putInt(bytes.length).array());
      sha256.update(bytes);
    }
    return new Draws(sha256, sha256.digest());
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /**
   * A whole number from 0 up to, not including, a bound above 0; each is as likely. Numbers beyond
   * the greatest multiple of the bound are drawn again (Lemire 2019, "Fast random integer
   * generation in an interval", section 3).
   */
  long below(long bound) {
    if (bound <= 0) {
      throw new IllegalArgumentException("nothing to draw below " + bound);
    }
    long most = Long.MAX_VALUE - Long.MAX_VALUE % bound;
    long drawn = next();
    while (drawn >= most) {
      drawn = next();
    }
    return drawn % bound;
  }

  /** The whole numbers below a count in an order by lot (Fisher and Yates, Durstenfeld 1964). */
  List<Integer> shuffled(int count) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      order.add(i);
    }
    for (int i = count - 1; i > 0; i--) {
      Collections.swap(order, i, (int) below(i + 1L));
    }
    return order;
  }

  /** 63 bits. */
  private long next() {
    sha256.update(seed);
    sha256.update(ByteBuffer.allocate(Long.BYTES).putLong(counter).array());
    counter++;
    return ByteBuffer.wrap(sha256.digest()).getLong() >>> 1;
  }
}
