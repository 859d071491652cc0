return {
  title = "Voltage inside the array after shutdown",
  cite = "check 9",
  about = "rapid_shutdown",
  check = function(shutdown) shall.not_exceed("Voltage", shutdown.voltage_inside, 80 * V) end,
}
