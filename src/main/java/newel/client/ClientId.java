package newel.client;

public record ClientId(String value) {}
