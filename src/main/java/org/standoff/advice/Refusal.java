package org.standoff.advice;

import java.util.OptionalDouble;

/**
 * Why not: a microphone that does not meet a requirement, with the failing figure.
 *
 * @param microphoneId the microphone
 * @param title its name for people
 * @param requirement name of the requirement
 * @param figure name of the failing figure, unit last
 * @param found the figure found; absent where it is no number
 * @param limit what it is held against
 * @param because the reason in words
 */
public record Refusal(
    String microphoneId,
    String title,
    String requirement,
    String figure,
    OptionalDouble found,
    OptionalDouble limit,
    String because) {}
