// SPDX-License-Identifier: MIT
/// Records in MARCXML (namespace http://www.loc.gov/MARC21/slim), read as a stream with expat: one record is kept at a time,
/// however many a file has. Elements are known by their names, with a prefix or without, in whatever order they come.
#pragma once

#include "input.hpp"
#include "marc.hpp"

#include <expat.h>
#include <functional>
#include <memory>

namespace support {

/// Reads records and hands each to a function.
class MarcXml {
  static constexpr std::size_t most_text = std::size_t{1} << 20U; // of one subfield
  std::function<void(MarcRecord const&)> act_;
  std::unique_ptr<XML_ParserStruct, decltype(&XML_ParserFree)> parser_{XML_ParserCreate(nullptr), &XML_ParserFree};
  MarcRecord record_{};
  MarcField field_{};
  std::string text_{};
  char code_{};
  bool in_text_{}; // inside a field of control or a subfield; the text of elements in it belongs to it
  std::exception_ptr failed_{};

  static std::string_view name_of(char const* name) {
    std::string_view const whole{name};
    auto const colon = whole.rfind(':');
    return colon == whole.npos ? whole : whole.substr(colon + 1);
  }
  static std::string_view attribute(char const** attributes, std::string_view name) {
    for (; *attributes != nullptr; attributes += 2)
      if (name == *attributes) return attributes[1];
    return "";
  }
  void begin(std::string_view name, char const** attributes) {
    if (name == "record") record_.clear();
    if (name == "controlfield" || name == "datafield") {
      field_ = {};
      field_.tag = attribute(attributes, "tag");
      auto const first = attribute(attributes, "ind1"), second = attribute(attributes, "ind2");
      field_.first_indicator = first.empty() ? ' ' : first[0];
      field_.second_indicator = second.empty() ? ' ' : second[0];
    }
    if (name == "subfield") code_ = attribute(attributes, "code").empty() ? ' ' : attribute(attributes, "code")[0];
    if (name == "controlfield" || name == "subfield") in_text_ = true, text_.clear();
  }
  void end(std::string_view name) {
    if (name == "controlfield") field_.data = text_;
    if (name == "subfield") field_.subfields.emplace_back(code_, text_);
    if (name == "controlfield" || name == "datafield") record_.add(std::move(field_));
    if (name == "record") act_(record_);
    if (name == "controlfield" || name == "subfield") in_text_ = false;
  }
  void text(char const* from, int size) {
    if (!in_text_) return;
    text_.append(from, static_cast<std::size_t>(size));
    if (text_.size() > most_text)
      throw Failure{"a subfield has more than " + std::to_string(most_text) + " bytes of text, near line " +
                    std::to_string(XML_GetCurrentLineNumber(parser_.get()))};
  }
  /// What is thrown must not pass through expat, which is C.
  template <class Work> void guarded(Work work) {
    if (failed_) return;
    try {
      work();
    } catch (...) {
      failed_ = std::current_exception();
      XML_StopParser(parser_.get(), XML_FALSE);
    }
  }

public:
  explicit MarcXml(std::function<void(MarcRecord const&)> act) : act_{std::move(act)} {
    if (!parser_) throw std::bad_alloc{};
    XML_SetUserData(parser_.get(), this);
    XML_SetElementHandler(
        parser_.get(),
        [](void* self, char const* name, char const** attributes) {
          static_cast<MarcXml*>(self)->guarded([&] { static_cast<MarcXml*>(self)->begin(name_of(name), attributes); });
        },
        [](void* self, char const* name) {
          static_cast<MarcXml*>(self)->guarded([&] { static_cast<MarcXml*>(self)->end(name_of(name)); });
        });
    XML_SetCharacterDataHandler(parser_.get(), [](void* self, char const* from, int size) {
      static_cast<MarcXml*>(self)->guarded([&] { static_cast<MarcXml*>(self)->text(from, size); });
    });
  }
  MarcXml(MarcXml const&) = delete;
  MarcXml& operator=(MarcXml const&) = delete;
  ~MarcXml() = default;

  /// Reads to the end. Throws a Failure where the text is not XML; the records before that were handed on.
  void read(Source& source) {
    while (true) {
      constexpr int room = 65536;
      void* const to = XML_GetBuffer(parser_.get(), room);
      if (to == nullptr) throw std::bad_alloc{};
      auto const taken = source.read(static_cast<char*>(to), room);
      auto const status = XML_ParseBuffer(parser_.get(), static_cast<int>(taken), taken == 0 ? 1 : 0);
      if (failed_) std::rethrow_exception(failed_);
      if (status == XML_STATUS_ERROR)
        throw Failure{"line " + std::to_string(XML_GetCurrentLineNumber(parser_.get())) +
                      " is not XML: " + XML_ErrorString(XML_GetErrorCode(parser_.get()))};
      if (taken == 0) return;
    }
  }
};

} // namespace support
