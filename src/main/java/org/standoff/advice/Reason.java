package org.standoff.advice;

/**
 * Why a setting is what it is.
 *
 * @param setting {@code pattern}, {@code filter}, {@code pad}, {@code gain}, {@code polarity}
 * @param value what it is set to, in words
 * @param because the reason, in the trade's words, with its figures
 */
public record Reason(String setting, String value, String because) {}
