package newel.client;

/** Somebody to call. */
public record Contact(String name, String phone) {}
