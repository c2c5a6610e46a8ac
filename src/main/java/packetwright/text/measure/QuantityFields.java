package packetwright.text.measure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.document.Node;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;

/** Quantities under the keys of a document; what cannot be read is a finding and no value. */
public final class QuantityFields {
  private final Unit unit;
  private final Findings findings;

  /**
   * A reader for one document.
   *
   * @param unit of lengths that name none
   * @param findings where to put what is wrong
   */
  public QuantityFields(Unit unit, Findings findings) {
    this.unit = unit;
    this.findings = findings;
  }

  /** The length of a key, of any sign; none without the key. */
  public @Nullable Located<Quantity> length(Node.Mapping from, String key) {
    return read(from.text(key), unit);
  }

  /** The length of a key, which may not be negative; none without the key. */
  public @Nullable Located<Quantity> extent(Node.Mapping from, String key) {
    return notNegative(length(from, key));
  }

  /** The lengths of a list, none of which may be negative. */
  public List<Located<Quantity>> extents(Node.Mapping from, String key) {
    List<Located<Quantity>> read = new ArrayList<>();
    for (Located<String> text : from.texts(key)) {
      Located<Quantity> extent = notNegative(read(text, unit));
      if (extent != null) {
        read.add(extent);
      }
    }
    return read;
  }

  /**
   * The amount of a key, which may not be negative and must have the dimension of one of the units;
   * none without the key.
   *
   * @param bare the first is the unit of a number that names none
   */
  public @Nullable Located<Quantity> amount(Node.Mapping from, String key, Unit... bare) {
    Located<String> text = from.text(key);
    if (text == null) {
      return null;
    }
    for (Unit candidate : bare) {
      Checked<Quantity> read = QuantityReader.read(text, candidate);
      if (read.hasValue()) {
        return notNegative(new Located<>(read.value(), text.at()));
      }
    }
    return read(text, bare[0]);
  }

  private @Nullable Located<Quantity> read(@Nullable Located<String> text, Unit bare) {
    if (text == null) {
      return null;
    }
    Quantity quantity = findings.take(QuantityReader.read(text, bare));
    return quantity == null ? null : new Located<>(quantity, text.at());
  }

  private @Nullable Located<Quantity> notNegative(@Nullable Located<Quantity> quantity) {
    if (quantity != null && quantity.value().value().signum() < 0) {
      findings.add(
          Finding.error(
              "negative-value",
              quantity.at(),
              "this is less than nothing",
              "write it without the minus sign"));
      return null;
    }
    return quantity;
  }
}
