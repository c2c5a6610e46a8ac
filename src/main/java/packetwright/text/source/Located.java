package packetwright.text.source;

/**
 * A value with the place it was written at.
 *
 * @param value as read
 * @param at where its text stands
 */
public record Located<T>(T value, Span at) {}
