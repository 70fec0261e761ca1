"""Korean phrases put together of parts: what viewers say in many ways that differ in a word."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

_COUNTED = "번 | 페이지 | 쪽 | 번 페이지 |"

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "printed": phrases("책 | 소설책 | 소설 | 잡지 | 신문"),
    "again": phrases("또"),
    "counting_pages": phrases("페이지 | 쪽"),
    "everyday": phrases(
        "위와 | 동일 | 나이 | 생일 | 벌써 | 아직 | 안되면 | 곱하기 | 순위 | 누가 | 어제 | 이겼어요"
    ),
    "choice_before": each_of("# 순위", "는 | 은 | : |")
    + phrases("안되면 | 안 되면 | 근데 저는 | 하지만 저는 | 차선 은 | 예비 는"),
    "choice_after": each_of(_COUNTED, "이면 | 면", "좋겠어요 | 좋겠네요 | 좋을 것 같아요"),
    "first_choice": phrases("1순위 | 일순위 | 첫번째 선택"),
    "second_choice": phrases("2순위 | 이순위 | 차선 | 예비"),
    "second": each_of("이미 | 벌써 |", "나갔으면 | 됐으면 | 선택됐으면 | 찼으면")
    + phrases("안되면 | 안 되면 | 안된다면 | 없으면 | 불가능하면"),
    "neutral_after": each_of(
        _COUNTED, "안되면 | 안 되면 | 말고 # | 말고 | 를 # | 을 # | 에서 # | 아니고 #"
    ),
    "correction": phrases("말고 | 아니고 | 대신 | 를 # 로 바꿔 | 바꿔주세요 | 아니다"),
    "reported_after": each_of(
        _COUNTED,
        "벌써 | 아직 | 이미 | 혹시",
        "나갔나요 | 남았어요 | 남았나요 | 있나요 | 있어요 | 했나요 | 나왔나요 | 골랐나요 | 됐나요",
    )
    + each_of(
        _COUNTED,
        "하신 분 | 하신 분이랑 | 하신 분과 | 하신분이랑 | 고르신 분 | 했나요 | 나갔나요 | 남았나요 | 남았어요",
    ),
    "asked_later": each_of("벌써 | 아직 | 이미", "나갔나요 | 남았어요 | 남았나요 | 있나요"),
    "reported_before": phrases("아무도 | 누가 | 누구 | 어떤 분이"),
    "pointing": each_of(
        "위와 | 윗분과 | 윗분이랑 | 위에 분이랑 | 위랑 | 앞분과",
        "동일 | 같은 거요 | 같아요 | 같은 번호 | 같이 | 똑같이",
    )
    + phrases(
        "위와 동일 | 제 나이 | 제 나이요 | 제 생일 | 제 생일이요 | 내 나이 | 우리집 호수 | 제 생년 | 결혼기념일"
    ),
    "withdrawn": each_of(
        "제 표 | 제 투표 | 투표 | 제 한표",
        "는 | 를 | 은 |",
        "빼주세요 | 취소할게요 | 취소해주세요 | 무효로 해주세요 | 취소",
    ),
    "kinds": phrases("십번대 | 이십번대 | 삼십번대"),
    "other_before": phrases("# 대 | 어제 # 대"),
    "other_after": phrases(
        "번 이나 * | 시간 이나 | 잔 이나 | 대 # | 대1 | 번 버스 | 호선 | 킬로 | 화네요 | 화 | 잔 | 살이고 | 살 | 가닥 | 카운트 | 원"
    ),
    "times": phrases("곱하기 | x"),
    "plus": phrases("더하기"),
    "minus": phrases("빼기"),
    "divided_by": phrases("나누기"),
}
