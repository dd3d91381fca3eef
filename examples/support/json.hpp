// SPDX-License-Identifier: MIT
/// Writing JSON, as RFC 8259 has it: an object or array at a time, members in the order in which they are added.
#pragma once

#include <bifolium/core/utf8.hpp>

#include <charconv>
#include <cstdint>
#include <string>
#include <string_view>

namespace support {

/// A string with its quotation marks. A byte that belongs to no UTF-8 character becomes U+FFFD.
inline std::string json_string(std::string_view text) {
  std::string quoted = "\"";
  for (std::size_t i = 0; i < text.size();) {
    auto const character = bifolium::decode(text, i);
    auto const c = text[i];
    if (character.malformed)
      quoted += "\xEF\xBF\xBD";
    else if (c == '"' || c == '\\')
      quoted += '\\', quoted += c;
    else if (character.value < 0x20) {
      constexpr char digits[] = "0123456789abcdef";
      quoted += "\\u00";
      quoted += digits[character.value >> 4U], quoted += digits[character.value & 0xFU];
    } else
      quoted += text.substr(i, character.bytes);
    i += character.bytes;
  }
  return quoted += '"';
}
/// A number with as many digits as `precision` wants.
inline std::string json_number(double number, int precision = 4) {
  char digits[32];
  auto const end = std::to_chars(digits, digits + sizeof digits, number, std::chars_format::general, precision).ptr;
  return {digits, end};
}

/// An object or an array that is being written.
class Json {
  std::string text_;
  char close_;

  void comma() {
    if (text_.size() > 1) text_ += ',';
  }
  explicit Json(char open, char close) : text_(1, open), close_{close} {}

public:
  static Json object() { return Json{'{', '}'}; }
  static Json array() { return Json{'[', ']'}; }
  /// A member whose value is JSON already.
  Json& add(std::string_view name, std::string const& json) {
    comma();
    text_.append(json_string(name)).append(":").append(json);
    return *this;
  }
  Json& text(std::string_view name, std::string_view value) { return add(name, json_string(value)); }
  Json& number(std::string_view name, std::int64_t value) { return add(name, std::to_string(value)); }
  /// An element of an array.
  Json& element(std::string const& json) {
    comma();
    text_ += json;
    return *this;
  }
  [[nodiscard]] std::string written() const { return text_ + close_; }
};

} // namespace support
